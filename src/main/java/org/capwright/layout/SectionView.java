package org.capwright.layout;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Gutter;
import org.capwright.part.Hood;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;
import org.capwright.part.Standoff;
import org.capwright.part.StopBar;
import org.capwright.units.Angle;
import org.capwright.units.ShopFormat;

/** The cap cut through its middle, square to the rods; leaves closed, and at the stop in phantom lines. */
final class SectionView {
    private static final double STACK_SHARE = 0.15;

    private final Cap cap;
    private final PartList parts;
    private final ShopFormat format;
    private final View.Builder view = new View.Builder("section across the rods");
    private final double footZ;
    private final double hoodFootZ;
    private final double topZ;

    private SectionView(Cap cap, PartList parts, ShopFormat format) {
        this.cap = cap;
        this.parts = parts;
        this.format = format;
        this.footZ = -cap.sleeve().heightMm();
        this.hoodFootZ = -cap.hood().belowRimMm();
        this.topZ = cap.hood().aboveRimMm();
    }

    static View of(Cap cap, PartList parts, ShopFormat format) {
        SectionView section = new SectionView(cap, parts, format);
        section.cylinders();
        cap.leaves().forEach(section::leaf);
        cap.gutters().forEach(section::gutter);
        cap.stops().forEach(section::bar);
        section.standoff();
        section.stack();
        section.dimensions();
        return section.view.build();
    }

    private void cylinders() {
        wall(cap.sleeve().insideRadiusMm(), cap.sleeve().outsideRadiusMm(), footZ, 0, cap.sleeve().flat());
        wall(cap.hood().insideRadiusMm(), cap.hood().outsideRadiusMm(), hoodFootZ, topZ, cap.hood().flat());
        Hood hood = cap.hood();
        view.add(LineKind.NARROW, Shapes.line(-hood.insideRadiusMm(), topZ, hood.insideRadiusMm(), topZ));
        view.add(LineKind.NARROW, Shapes.line(-cap.sleeve().insideRadiusMm(), footZ, cap.sleeve().insideRadiusMm(), footZ));
        double over = (topZ - footZ) * 0.03;
        view.add(LineKind.CENTER, Shapes.line(0, footZ - over, 0, topZ + over));
        view.note(cap.sleeve().outsideRadiusMm(), footZ * 0.8, parts.words("sleeve"));
        view.note(hood.outsideRadiusMm(), topZ * 0.7, parts.words("hood"));
    }

    private void wall(double inside, double outside, double foot, double top, CylinderFlat flat) {
        view.both(LineKind.OUTLINE, Shapes.face(inside, foot, top, flat.beads()));
        view.both(LineKind.OUTLINE, Shapes.face(outside, foot, top, flat.beads()));
        view.both(LineKind.OUTLINE, Shapes.line(inside, foot, outside, foot));
        view.both(LineKind.OUTLINE, Shapes.line(inside, top, outside, top));
    }

    private void leaf(Leaf leaf) {
        Path closed = LeafSection.whole(leaf);
        Vec2 axis = new Vec2(leaf.rodAxisMm(), leaf.rodAxisZMm());
        Path open = Shapes.turned(closed, axis, cap.stopRad());
        view.both(LineKind.OUTLINE, closed).both(LineKind.PHANTOM, open);
        view.both(LineKind.OUTLINE, Path.circle(axis, leaf.rodRadiusMm()));
        view.note(axis.x() + 0.75 * leaf.reachMm(), leaf.sheet().thicknessMm() / 2, parts.words("leaf " + leaf.number()));
        view.note(axis.x(), axis.y(), parts.words("pivot rod " + leaf.number()));
        if (leaf.number() == 1) {
            Vec2 tip = LeafSection.onOpen(leaf, 0.6 * leaf.reachMm(), cap.stopRad());
            view.note(tip.x(), tip.y(), "leaf at the stop, " + format.angle(Angle.ofRad(cap.stopRad())));
        }
    }

    private void gutter(Gutter gutter) {
        double half = gutter.outsideWidthMm() / 2;
        double x = gutter.jointMm();
        double floor = -gutter.outsideDepthMm();
        Path channel = Shapes.sheet(List.of(new Vec2(x - half, 0), new Vec2(x - half, floor), new Vec2(x + half, floor),
                new Vec2(x + half, 0)),
                gutter.sheet().thicknessMm());
        mirroredOffMiddle(channel, x);
        view.note(x + half, floor / 2, parts.words("gutter " + gutter.number()));
    }

    private void bar(StopBar bar) {
        double x = bar.jointMm();
        double top = bar.cornerZMm() + bar.depthMm();
        Path channel = Shapes.sheet(List.of(new Vec2(x + bar.halfWidthMm(), bar.cornerZMm()),
                new Vec2(x + bar.halfWidthMm(), top),
                new Vec2(x - bar.halfWidthMm(), top), new Vec2(x - bar.halfWidthMm(), bar.cornerZMm())), bar.sheet()
                        .thicknessMm());
        mirroredOffMiddle(channel, x);
        view.note(x + bar.halfWidthMm(), top - bar.depthMm() / 3, parts.words("stop bar " + bar.number()));
    }

    private void mirroredOffMiddle(Path path, double jointMm) {
        view.add(LineKind.OUTLINE, path);
        if (jointMm > 0) {
            view.add(LineKind.OUTLINE, Shapes.mirrored(path));
        }
    }

    private void standoff() {
        Standoff standoff = cap.standoff();
        double top = standoff.topZMm();
        view.both(LineKind.NARROW, Shapes.rectangle(standoff.sleeveOutsideMm(), top - standoff.heightMm(),
                standoff.hoodInsideMm(), top));
        view.note((standoff.sleeveOutsideMm() + standoff.hoodInsideMm()) / 2, top - standoff.heightMm() / 2,
                parts.words("standoff"));
    }

    /** The stack's end rests against the stop bead. */
    private void stack() {
        double radius = cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm() / 2;
        double low = footZ * (1 + STACK_SHARE);
        double end = cap.sleeve().flat().beads().stream().findFirst().map(bead -> beadZ(footZ, bead) - bead.bead()
                .widthMm() / 2).orElse(footZ / 2);
        view.both(LineKind.PHANTOM, Shapes.line(radius, low, radius, end))
                .add(LineKind.PHANTOM, Shapes.line(-radius, end, radius, end));
        view.note(radius, (low + footZ) / 2, "stack (not ours)");
        view.diameter(radius, low);
    }

    private static double beadZ(double foot, PlacedBead bead) {
        return foot + bead.aboveFootMm();
    }

    private void dimensions() {
        double sleeve = -cap.sleeve().outsideRadiusMm();
        double hood = -cap.hood().outsideRadiusMm();
        view.diameter(cap.sleeve().insideRadiusMm(), footZ).diameter(cap.hood().insideRadiusMm(), hoodFootZ);
        view.left(footZ, 0, sleeve, sleeve).left(hoodFootZ, 0, hood, sleeve).left(0, topZ, sleeve, hood);
        view.left(footZ, topZ, sleeve, hood);
        cap.sleeve().flat().beads().forEach(bead -> view.left(footZ, beadZ(footZ, bead), sleeve, sleeve));
        StopBar bar = cap.stops().get(0);
        view.left(0, bar.cornerZMm(), sleeve, -bar.halfWidthMm());
    }
}
