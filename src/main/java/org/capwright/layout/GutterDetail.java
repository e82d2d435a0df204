package org.capwright.layout;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** The middle gutter in section, the heels of the middle pair over it, closed and at the stop. */
final class GutterDetail {
    private static final double PAST_SHARE = 0.2;
    private static final double OPEN_REACH = 2.5;

    private GutterDetail() {
    }

    static View of(Cap cap, Swing swing, PartList parts, ShopFormat format) {
        Gutter gutter = cap.gutters().get(0);
        Leaf leaf = cap.leaves().get(0);
        double half = gutter.outsideWidthMm() / 2;
        double floor = -gutter.outsideDepthMm();
        double end = half * (1 + PAST_SHARE);
        Vec2 axis = new Vec2(leaf.rodAxisMm(), leaf.rodAxisZMm());
        View.Builder view = new View.Builder("middle gutter and hinge edges, section across the rods");
        view.add(LineKind.OUTLINE, Shapes.sheet(List.of(new Vec2(-half, 0), new Vec2(-half, floor), new Vec2(half, floor),
                new Vec2(half, 0)),
                gutter.sheet().thicknessMm()));
        view.both(LineKind.OUTLINE, LeafSection.upTo(leaf, end)).both(LineKind.OUTLINE, Path.circle(axis, leaf.rodRadiusMm()));
        view.both(LineKind.PHANTOM, Shapes.turned(LeafSection.upTo(leaf, axis.x() + OPEN_REACH * leaf.rodRadiusMm()), axis,
                cap.stopRad()));
        view.add(LineKind.CENTER, Shapes.line(0, floor - 5, 0, axis.y() + OPEN_REACH * leaf.rodRadiusMm()));
        dimensions(view, cap, gutter, leaf);
        notes(view, swing, cap, parts, format);
        return view.build();
    }

    private static void dimensions(View.Builder view, Cap cap, Gutter gutter, Leaf leaf) {
        double inside = gutter.insideWidthMm() / 2;
        double half = gutter.outsideWidthMm() / 2;
        double lip = leaf.sheet().thicknessMm() - leaf.lipDownMm(leaf.hingeFlangeMm());
        view.below(-leaf.slab().hingeEdgeMm(), leaf.slab().hingeEdgeMm(), lip)
                .below(-leaf.rodAxisMm(), leaf.rodAxisMm(), leaf.rodAxisZMm());
        view.below(-inside, inside, -gutter.depthMm()).below(-half, half, -gutter.outsideDepthMm());
        view.left(-gutter.depthMm(), 0, -inside, -half).left(0, leaf.rodAxisZMm(), -half, -leaf.rodAxisMm());
        view.left(lip, leaf.sheet().thicknessMm(), -leaf.slab().hingeEdgeMm(), -half * (1 + PAST_SHARE));
        view.left(-gutter.outsideDepthMm(), 0, -half, -half);
    }

    private static void notes(View.Builder view, Swing swing, Cap cap, PartList parts, ShopFormat format) {
        Gutter gutter = cap.gutters().get(0);
        Leaf leaf = cap.leaves().get(0);
        double half = gutter.outsideWidthMm() / 2;
        view.note(half, -gutter.depthMm() * 0.8, parts.words("gutter 1") + ": spouts end "
                + format.length(Length.ofMm(gutter.endRadiusMm()
                - cap.sleeve().outsideRadiusMm())) + " past the sleeve");
        view.note(half * (1 + PAST_SHARE / 2), leaf.sheet().thicknessMm() / 2, parts.words("leaf 1") + ", closed on the rim");
        view.note(leaf.rodAxisMm(), leaf.rodAxisZMm(), parts.words("pivot rod 1"));
        Vec2 open = LeafSection.onOpen(leaf, 2 * leaf.rodRadiusMm(), cap.stopRad());
        view.note(open.x(), open.y(), "leaf at the stop, " + format.angle(Angle.ofRad(cap.stopRad())));
        view.note(gutter.insideWidthMm() / 2, -gutter.depthMm() * 0.3, "heel to wall, least "
                + length(format, swing.least(Pair.HEEL_WALL, 1).leastMm()));
        view.note(leaf.rodAxisMm() * 0.5, -gutter.depthMm(), "heel to floor, least "
                + length(format, swing.least(Pair.HEEL_FLOOR, 1).leastMm()));
    }

    private static String length(ShopFormat format, double mm) {
        return format.length(Length.ofMm(mm));
    }
}
