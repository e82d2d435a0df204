package org.capwright.refold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.blank.RandomCaps;
import org.capwright.drawing.Layer;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Jobs;
import org.capwright.part.Sleeve;
import org.junit.jupiter.api.Test;

/** The sleeve's blanks rolled up: gutters pass through their notches, standoffs and fasteners are where they belong. */
class SleeveRefoldedTest {
    /** A notch as rolled: its sides and its bottom, z. */
    private record Mouth(double fromRad, double toRad, double bottomZ) {
    }

    @Test
    void kiln() {
        check(Cap.solve(Jobs.kiln()), "kiln");
    }

    @Test
    void randomCaps() {
        RandomCaps.of(1_600, 40).forEach(drawn -> check(drawn.cap(), drawn.toString()));
    }

    private static void check(Cap cap, String which) {
        Sleeve sleeve = cap.sleeve();
        int pieces = sleeve.flat().pieces();
        List<Mouth> mouths = new ArrayList<>();
        List<Double> welds = new ArrayList<>();
        List<Double> fasteners = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            Blank blank = Flat.blank(cap, pieces == 1 ? "sleeve" : "sleeve-" + (i + 1));
            Roll roll = new Roll(sleeve.flat(), i, sleeve.insideRadiusMm(), sleeve.sheet().thicknessMm());
            notches(blank, roll, sleeve.heightMm(), mouths);
            blank.holes().forEach(hole -> fasteners.add(roll.azimuthRad(((Segment.Arc) hole.segments().get(0)).center().x())));
            blank.drawing().paths(Layer.MARK).stream().filter(Path::closed).forEach(mark -> weld(cap, roll, mark.bounds(), welds, which));
        }
        cap.gutters().forEach(gutter -> passes(cap, gutter, mouths, which));
        for (int i = 0; i < cap.standoff().count(); i++) {
            double rivets = cap.standoff().firstRad() + 2 * Math.PI * i / cap.standoff().count();
            // the web stands on a radius: the flanges' middles are half their own widths from it
            double middle = rivets - Math.asin(cap.standoff().outerFlangeMm() / 2 / cap.hood().insideRadiusMm())
                    + Math.atan2(cap.standoff().innerFlangeMm() / 2, sleeve.outsideRadiusMm());
            assertThat(welds).as("standoff %d: %s", i, which).anyMatch(weld -> Math.abs(Roll.turned(weld - middle)) < 1e-9);
        }
        assertThat(fasteners.stream().map(f -> Math.round(1e6 * Math.cos(f)) + " " + Math.round(1e6 * Math.sin(f))).distinct().count())
                .as(which).isEqualTo(sleeve.holes().count());
    }

    private static void notches(Blank blank, Roll roll, double heightMm, List<Mouth> mouths) {
        double top = blank.outline().bounds().maxY();
        for (Segment segment : blank.outline().segments()) {
            Vec2 from = segment.from();
            Vec2 to = segment.to();
            if (Math.abs(from.y() - to.y()) < 1e-9 && from.y() > 1 && from.y() < top - 1) {
                mouths.add(new Mouth(roll.azimuthRad(Math.min(from.x(), to.x())), roll.azimuthRad(Math.max(from.x(), to.x())),
                        roll.heightMm(from.y()) - heightMm));
            }
        }
    }

    private static void weld(Cap cap, Roll roll, Bounds mark, List<Double> welds, String which) {
        welds.add(roll.azimuthRad(mark.center().x()));
        double top = roll.heightMm(mark.maxY()) - cap.sleeve().heightMm();
        assertThat(top).as("top of standoffs: " + which).isCloseTo(cap.standoff().topZMm(), within(1e-6));
    }

    /** At both ends of a gutter and of its mirror image a notch frees the gutter's outside, and no more than a flat wall needs. */
    private static void passes(Cap cap, Gutter gutter, List<Mouth> mouths, String which) {
        for (int mirror : new int[] {1, -1}) {
            for (int end : new int[] {1, -1}) {
                Mouth mouth = mouths.stream().min((a, b) -> Double.compare(off(a, gutter, mirror, end, cap), off(b, gutter, mirror, end, cap)))
                        .orElseThrow();
                sides(cap, gutter, mirror, mouth, which);
                assertThat(mouth.bottomZ()).as(which).isCloseTo(-gutter.depthMm() - gutter.sheet().thicknessMm(), within(1e-6));
            }
        }
    }

    private static double off(Mouth mouth, Gutter gutter, int mirror, int end, Cap cap) {
        double middle = (mouth.fromRad() + mouth.toRad()) / 2;
        double x = cap.sleeve().insideRadiusMm() * Math.cos(middle);
        return Math.abs(x - mirror * gutter.jointMm()) + (Math.signum(Math.sin(middle)) == end ? 0 : 1e6);
    }

    private static void sides(Cap cap, Gutter gutter, int mirror, Mouth mouth, String which) {
        double inside = cap.sleeve().insideRadiusMm();
        double outside = cap.sleeve().outsideRadiusMm();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double side : new double[] {mouth.fromRad(), mouth.toRad()}) {
            double a = inside * Math.cos(side) - mirror * gutter.jointMm();
            double b = outside * Math.cos(side) - mirror * gutter.jointMm();
            double sign = Math.signum(a);
            double clear = Math.min(sign * a, sign * b);
            least = Math.min(least, clear);
            most = Math.max(most, clear);
        }
        double half = gutter.insideWidthMm() / 2 + gutter.sheet().thicknessMm();
        assertThat(least).as("gutter " + gutter.number() + " passes: " + which).isCloseTo(half, within(1e-6));
        assertThat(most).as("gutter " + gutter.number() + " fits: " + which).isCloseTo(half, within(1e-6));
    }
}
