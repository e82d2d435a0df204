package org.capwright.refold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.blank.CurveTolerance;
import org.capwright.blank.RandomCaps;
import org.capwright.drawing.Layer;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Hood;
import org.capwright.part.Jobs;
import org.capwright.part.PivotRod;
import org.capwright.part.Standoff;
import org.junit.jupiter.api.Test;

/** The hood's blanks rolled up: straight bores go through, rivet holes meet the standoffs, the seam closes. */
class HoodRefoldedTest {
    private static final int LAYERS = 8;

    @Test
    void kiln() {
        check(Cap.solve(Jobs.kiln()), "kiln");
    }

    @Test
    void randomCaps() {
        RandomCaps.of(1_200, 40).forEach(drawn -> check(drawn.cap(), drawn.toString()));
    }

    private static void check(Cap cap, String which) {
        Hood hood = cap.hood();
        int pieces = hood.flat().pieces();
        List<Vec2> bores = new ArrayList<>();
        List<Vec2> rivets = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            Blank blank = Flat.blank(cap, pieces == 1 ? "hood" : "hood-" + (i + 1));
            Roll roll = new Roll(hood.flat(), i, hood.insideRadiusMm(), hood.sheet().thicknessMm());
            seam(cap, blank, which);
            for (Path hole : blank.holes()) {
                if (hole.segments().get(0) instanceof Segment.Arc arc) {
                    rivets.add(new Vec2(roll.azimuthRad(arc.center().x()), roll.heightMm(arc.center().y()) - hood.belowRimMm()));
                } else {
                    bores.add(bore(cap, roll, hole, which));
                }
            }
        }
        allBores(cap, bores, which);
        rivetsMeetStandoffs(cap, rivets, which);
    }

    /** Finds the rod that a hole belongs to and measures the hole against its bore; returns the rod's place. */
    private static Vec2 bore(Cap cap, Roll roll, Path hole, String which) {
        List<Vec2> points = hole.points(CurveTolerance.MM).stream().map(p -> new Vec2(roll.azimuthRad(p.x()), roll.heightMm(p.y()))).toList();
        double azimuth = points.stream().mapToDouble(Vec2::x).average().orElseThrow();
        double middle = cap.hood().insideRadiusMm() * Math.cos(azimuth);
        PivotRod rod = cap.rods().stream().min((a, b) -> Double.compare(Math.abs(a.axisMm() - Math.abs(middle)),
                Math.abs(b.axisMm() - Math.abs(middle)))).orElseThrow();
        double x = Math.copySign(rod.axisMm(), middle);
        for (Vec2 p : points) {
            double z = p.y() - cap.hood().belowRimMm() - rod.axisZMm();
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= LAYERS; i++) {
                double radius = cap.hood().insideRadiusMm() + cap.hood().sheet().thicknessMm() * i / LAYERS;
                nearest = Math.min(nearest, Math.hypot(radius * Math.cos(p.x()) - x, z));
            }
            // no layer of the wall is left standing in the bore, and the nearest one just touches it
            assertThat(nearest).as("bore of rod " + rod.number() + ": " + which)
                    .isCloseTo(cap.bushing().outsideMm() / 2, within(CurveTolerance.MM));
        }
        return new Vec2(x, Math.signum(Math.sin(azimuth)));
    }

    private static void allBores(Cap cap, List<Vec2> bores, String which) {
        for (PivotRod rod : cap.rods()) {
            for (Vec2 end : List.of(new Vec2(1, 1), new Vec2(1, -1), new Vec2(-1, 1), new Vec2(-1, -1))) {
                assertThat(bores).as("rod " + rod.number() + ": " + which)
                        .anyMatch(bore -> Math.abs(bore.x() - end.x() * rod.axisMm()) < 1e-9 && bore.y() == end.y());
            }
        }
    }

    private static void rivetsMeetStandoffs(Cap cap, List<Vec2> rivets, String which) {
        Standoff standoff = cap.standoff();
        for (int i = 0; i < standoff.count(); i++) {
            double azimuth = standoff.firstRad() + 2 * Math.PI * i / standoff.count();
            for (int k = 0; k < standoff.rivets().each(); k++) {
                // evenly spaced: half a pitch from the bracket's edges
                double z = standoff.topZMm() - standoff.heightMm() * (k + 0.5) / standoff.rivets().each();
                // a hole on a bead is for the checks to refuse; where it lies in the flat depends on the bead's form
                double near = onBead(cap, z + cap.hood().belowRimMm()) ? 1.5 : 1e-6;
                assertThat(rivets).as("rivet %d of standoff %d: %s", k, i, which).anyMatch(rivet ->
                        Math.abs(Roll.turned(rivet.x() - azimuth)) < 1e-9 && Math.abs(rivet.y() - z) < near);
            }
        }
    }

    private static boolean onBead(Cap cap, double aboveFootMm) {
        return cap.hood().flat().beads().stream()
                .anyMatch(bead -> Math.abs(bead.aboveFootMm() - aboveFootMm) < bead.bead().widthMm() / 2);
    }

    /** Rolled to the mid-surface, the ends overlap by just the lap, and each end comes to lie on the other's line. */
    private static void seam(Cap cap, Blank blank, String which) {
        double girth = 2 * Math.PI * (cap.hood().insideRadiusMm() + cap.hood().sheet().thicknessMm() / 2) / cap.hood().flat().pieces();
        double over = blank.outline().bounds().width() - girth;
        double width = cap.hood().flat().seam().widthMm();
        switch (cap.hood().flat().seam().kind()) {
            case BUTT -> assertThat(over).as(which).isCloseTo(0, within(1e-9));
            case LOCK -> assertThat(over).as(which).isCloseTo(3 * width, within(1e-9));
            case LAP -> {
                assertThat(over).as(which).isCloseTo(width, within(1e-9));
                List<Double> lines = blank.drawing().paths(Layer.MARK).stream().filter(path -> path.bounds().width() < 1e-9
                        && path.bounds().height() > blank.outline().bounds().height() - 1e-6).map(path -> path.bounds().minX()).sorted().toList();
                assertThat(lines).as(which).hasSize(2);
                assertThat(lines.get(0)).as(which).isCloseTo(over, within(1e-9));
                assertThat(lines.get(1)).as(which).isCloseTo(girth, within(1e-9));
            }
            default -> throw new IllegalStateException();
        }
    }
}
