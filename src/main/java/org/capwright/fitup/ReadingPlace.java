package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Vec2;
import org.capwright.job.FitInputs;
import org.capwright.job.JobInputs;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.units.QuantityParser;

/**
 * Where a reading is taken, for a drawing that shows it.
 *
 * @param view the drawing that it shows in
 * @param from one end; the centre of a girth
 * @param to the other end; the same point where only the place is shown, a point of the circle for a girth
 * @param girth whether the tape goes round
 */
public record ReadingPlace(View view, Vec2 from, Vec2 to, boolean girth) {
    /** The drawing that a place shows in. */
    public enum View {
        /** From above: x across the rods, y along them. */
        PLAN,
        /** Across the rods: x across, z up. */
        SECTION
    }

    /**
     * The places of a reading.
     *
     * @param line the reading
     * @param cap the cap as drawn
     * @return one or two: a height shows in the section, and the end that it is taken at in the plan
     */
    public static List<ReadingPlace> of(SheetLine line, Cap cap) {
        String path = line.path();
        double azimuth = Math.toRadians(line.azimuthDegrees());
        if (path.equals(FitInputs.STACK_GIRTH.path())) {
            return List.of(girth(stackMm(cap)));
        } else if (path.equals(FitInputs.SLEEVE_GIRTH.path())) {
            return List.of(girth(cap.sleeve().outsideRadiusMm()));
        } else if (path.equals(FitInputs.END_PLAY.path())) {
            return endPlay(cap);
        } else if (path.startsWith(FitInputs.STACK + "[")) {
            return List.of(across(stackMm(cap), azimuth));
        } else if (path.startsWith(FitInputs.SLEEVE + "[")) {
            return List.of(across(cap.sleeve().outsideRadiusMm(), azimuth));
        } else if (path.startsWith(FitInputs.HOOD_BORE + "[")) {
            boolean radius = path.endsWith("." + FitInputs.HOOD_RADIUS.name());
            return List.of(radius ? plan(Vec2.ZERO, Vec2.polar(cap.hood().insideRadiusMm(), azimuth))
                    : across(cap.hood().insideRadiusMm(), azimuth));
        } else if (path.startsWith(FitInputs.GAPS + "[")) {
            return List.of(plan(Vec2.polar(cap.sleeve().outsideRadiusMm(), azimuth),
                    Vec2.polar(cap.hood().insideRadiusMm(), azimuth)));
        } else if (path.startsWith(FitInputs.COVERS + "[")) {
            return List.of(plan(Vec2.polar(cap.sleeve().outsideRadiusMm(), azimuth),
                    Vec2.polar(cap.leaves().get(0).slab().radiusMm(), azimuth)));
        }
        return ofMember(line, cap);
    }

    /** Readings of a member that has a number: rod, leaf, gutter. */
    private static List<ReadingPlace> ofMember(SheetLine line, Cap cap) {
        int number = Integer.parseInt(key(line, "number"));
        if (line.path().startsWith(FitInputs.RODS + "[")) {
            return rod(line, cap, number);
        } else if (line.path().startsWith(FitInputs.LEAVES + "[")) {
            return List.of(leaf(line, cap, number));
        }
        Gutter gutter = cap.gutters().get(number - 1);
        double half = gutter.insideWidthMm() / 2;
        double joint = gutter.jointMm();
        if (line.path().endsWith("." + FitInputs.GUTTER_WIDTH.name())) {
            double z = -gutter.depthMm() / 2;
            return List.of(section(new Vec2(joint - half, z), new Vec2(joint + half, z)),
                    plan(new Vec2(joint - half, 0), new Vec2(joint + half, 0)));
        }
        return List.of(section(new Vec2(joint, 0), new Vec2(joint, -gutter.depthMm())),
                plan(new Vec2(joint, 0), new Vec2(joint, 0)));
    }

    private static List<ReadingPlace> rod(SheetLine line, Cap cap, int number) {
        Leaf leaf = cap.leaves().get(number - 1);
        int side = sign(key(line, "side"));
        double y = sign(key(line, "end")) * cap.doublers().get(number - 1).faceYMm();
        Vec2 end = new Vec2(side * leaf.rodAxisMm(), y);
        if (line.path().endsWith("." + FitInputs.ROD_OFFSET.name())) {
            return List.of(plan(new Vec2(side * leaf.slab().hingeEdgeMm(), y), end));
        }
        double x = side * leaf.rodAxisMm();
        return List.of(section(new Vec2(x, 0), new Vec2(x, leaf.rodAxisZMm())), plan(end, end));
    }

    private static ReadingPlace leaf(SheetLine line, Cap cap, int number) {
        Leaf.Slab slab = cap.leaves().get(number - 1).slab();
        int side = sign(key(line, "side"));
        double at = QuantityParser.length(key(line, "at"), cap.job().get(JobInputs.UNITS)).mm();
        double end = slab.freeChord() ? slab.freeEdgeMm() : Math.sqrt(slab.radiusMm() * slab.radiusMm() - at * at);
        return plan(new Vec2(side * slab.hingeEdgeMm(), at), new Vec2(side * end, at));
    }

    private static List<ReadingPlace> endPlay(Cap cap) {
        List<ReadingPlace> ends = new ArrayList<>();
        for (PivotRod rod : cap.rods()) {
            double face = cap.doublers().get(rod.number() - 1).faceYMm();
            ends.add(plan(new Vec2(rod.axisMm(), face), new Vec2(rod.axisMm(), rod.lengthMm() / 2)));
        }
        return ends;
    }

    private static ReadingPlace girth(double radiusMm) {
        return new ReadingPlace(View.PLAN, Vec2.ZERO, new Vec2(radiusMm, 0), true);
    }

    private static ReadingPlace across(double radiusMm, double azimuthRad) {
        Vec2 end = Vec2.polar(radiusMm, azimuthRad);
        return plan(end.times(-1), end);
    }

    private static ReadingPlace plan(Vec2 from, Vec2 to) {
        return new ReadingPlace(View.PLAN, from, to, false);
    }

    private static ReadingPlace section(Vec2 from, Vec2 to) {
        return new ReadingPlace(View.SECTION, from, to, false);
    }

    private static double stackMm(Cap cap) {
        return cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm() / 2;
    }

    /** What must be typed with the reading under a name, such as {@code side}. */
    private static String key(SheetLine line, String name) {
        return line.along().entrySet().stream().filter(one -> one.getKey().endsWith("."
                + name)).findFirst().orElseThrow().getValue();
    }

    private static int sign(String side) {
        return side.equals(FitInputs.Side.PLUS.word()) ? 1 : -1;
    }
}
