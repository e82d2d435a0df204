package org.capwright.layout;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.PlacedBead;
import org.capwright.part.Sleeve;
import org.capwright.part.Standoff;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** The cap from the side, seen along the rods from their -y ends. */
final class ElevationView {
    private final Cap cap;
    private final PartList parts;
    private final ShopFormat format;
    private final View.Builder view = new View.Builder("elevation, seen along the rods");
    private final double footZ;
    private final double hoodFootZ;
    private final double topZ;

    private ElevationView(Cap cap, PartList parts, ShopFormat format) {
        this.cap = cap;
        this.parts = parts;
        this.format = format;
        this.footZ = -cap.sleeve().heightMm();
        this.hoodFootZ = -cap.hood().belowRimMm();
        this.topZ = cap.hood().aboveRimMm();
    }

    static View of(Cap cap, PartList parts, ShopFormat format) {
        ElevationView elevation = new ElevationView(cap, parts, format);
        elevation.cylinders();
        cap.doublers().forEach(elevation::doubler);
        elevation.rivets();
        elevation.fastenerHoles();
        elevation.dimensions();
        return elevation.view.build();
    }

    private void cylinders() {
        double hood = cap.hood().outsideRadiusMm();
        double sleeve = cap.sleeve().outsideRadiusMm();
        view.both(LineKind.OUTLINE, Shapes.face(hood, hoodFootZ, topZ, cap.hood().flat().beads().stream()
                .filter(bead -> !bead.inward()).toList()));
        view.add(LineKind.OUTLINE, Shapes.line(-hood, topZ, hood, topZ))
                .add(LineKind.OUTLINE, Shapes.line(-hood, hoodFootZ, hood, hoodFootZ));
        view.both(LineKind.OUTLINE, Shapes.line(sleeve, Math.min(hoodFootZ, 0), sleeve, footZ));
        view.add(LineKind.OUTLINE, Shapes.line(-sleeve, footZ, sleeve, footZ));
        view.both(LineKind.HIDDEN, Shapes.line(sleeve, hoodFootZ, sleeve, 0))
                .add(LineKind.HIDDEN, Shapes.line(-sleeve, 0, sleeve, 0));
        for (PlacedBead placed : cap.hood().flat().beads()) {
            beadEdges(hood, hoodFootZ + placed.aboveFootMm(), placed);
        }
        for (PlacedBead placed : cap.sleeve().flat().beads()) {
            if (footZ + placed.aboveFootMm() + placed.bead().widthMm() / 2 < hoodFootZ) {
                beadEdges(sleeve, footZ + placed.aboveFootMm(), placed);
                view.note(sleeve, footZ + placed.aboveFootMm(), "stop bead, inward");
            }
        }
        double over = (topZ - footZ) * 0.03;
        view.add(LineKind.CENTER, Shapes.line(0, footZ - over, 0, topZ + over));
        view.note(hood, topZ * 0.5, parts.words("hood")).note(sleeve, (footZ + hoodFootZ) / 2, parts.words("sleeve"));
        seam(cap.hood().flat(), hood, hoodFootZ, topZ, "hood seam");
        seam(cap.sleeve().flat(), sleeve, footZ, Math.min(hoodFootZ, 0), "sleeve seam");
    }

    private void beadEdges(double radius, double middleZ, PlacedBead placed) {
        for (int side : new int[] {-1, 1}) {
            double z = middleZ + side * placed.bead().widthMm() / 2;
            view.add(LineKind.NARROW, Shapes.line(-radius, z, radius, z));
        }
    }

    /** Seams on the side that is seen: where sin(azimuth) is negative. */
    private void seam(CylinderFlat flat, double radius, double fromZ, double toZ, String words) {
        for (int i = 0; i < flat.pieces(); i++) {
            double azimuth = flat.seamAzimuthRad() + 2 * Math.PI * i / flat.pieces();
            if (Math.sin(azimuth) < 0) {
                double x = radius * Math.cos(azimuth);
                view.add(LineKind.NARROW, Shapes.line(x, fromZ, x, toZ));
                view.note(x, fromZ + 0.3 * (toZ - fromZ), words);
            }
        }
    }

    private void doubler(Doubler plate) {
        double axis = cap.rods().get(plate.number() - 1).axisZMm();
        Path outline = Shapes.rectangle(plate.fromMm(), axis - plate.heightMm() / 2, plate.toMm(), axis + plate.heightMm() / 2);
        add(plate, outline);
        for (double bore : plate.boresMm()) {
            Vec2 at = new Vec2(bore, axis);
            add(plate, Path.circle(at, cap.bushing().flangeOutsideMm() / 2));
            add(plate, Path.circle(at, cap.washer().outsideMm() / 2));
            add(plate, Path.circle(at, cap.washer().boreMm() / 2));
        }
        double last = plate.boresMm().get(plate.boresMm().size() - 1);
        view.note(plate.toMm(), axis + plate.heightMm() * 0.35, parts.words("doubler " + plate.number()));
        view.note(last, axis, parts.words("pivot rod " + plate.number()));
        if (plate.number() == 1) {
            double off = cap.washer().outsideMm() / 2 * Math.sqrt(0.5);
            view.note(last + off, axis - off, parts.words("washer"));
        }
    }

    private void add(Doubler plate, Path path) {
        view.add(LineKind.OUTLINE, path);
        if (plate.number() > 1) {
            view.add(LineKind.OUTLINE, Shapes.mirrored(path));
        }
    }

    private void rivets() {
        Standoff standoff = cap.standoff();
        double radius = cap.hood().outsideRadiusMm();
        boolean named = false;
        for (int i = 0; i < standoff.count(); i++) {
            double azimuth = standoff.azimuthRad(i);
            if (Math.sin(azimuth) < -1e-9) {
                for (int j = 0; j < standoff.rivets().each(); j++) {
                    // a rivet's head is about twice as wide as its shank
                    round(radius, azimuth, rivetZ(standoff, j), standoff.rivets().diameterMm());
                }
                if (!named && Math.cos(azimuth) > -1e-9) {
                    view.note(radius * Math.cos(azimuth), rivetZ(standoff, 0), parts.words("blind rivet"));
                    named = true;
                }
            }
        }
    }

    private static double rivetZ(Standoff standoff, int index) {
        return standoff.topZMm() - standoff.heightMm() + standoff.rivetHeightMm(index);
    }

    private void fastenerHoles() {
        Sleeve.FastenerHoles holes = cap.sleeve().holes();
        boolean named = false;
        for (int i = 0; i < holes.count(); i++) {
            double azimuth = holes.firstRad() + 2 * Math.PI * i / holes.count();
            if (Math.sin(azimuth) < -1e-9) {
                round(cap.sleeve().outsideRadiusMm(), azimuth, footZ + holes.aboveFootMm(), holes.diameterMm() / 2);
                if (!named && Math.cos(azimuth) > -1e-9) {
                    view.note(cap.sleeve().outsideRadiusMm() * Math.cos(azimuth), footZ + holes.aboveFootMm(), holes.count()
                            + " fastener holes \u00d8 " + format.length(Length.ofMm(holes.diameterMm())));
                    named = true;
                }
            }
        }
    }

    private void round(double cylinderMm, double azimuthRad, double z, double radiusMm) {
        view.add(LineKind.NARROW, Shapes.ellipse(cylinderMm * Math.cos(azimuthRad), z,
                radiusMm * Math.max(0.05, -Math.sin(azimuthRad)), radiusMm));
    }

    private void dimensions() {
        double hood = -cap.hood().outsideRadiusMm();
        double sleeve = -cap.sleeve().outsideRadiusMm();
        Doubler plate = cap.doublers().get(0);
        view.diameter(cap.hood().outsideRadiusMm(), hoodFootZ).diameter(cap.sleeve().outsideRadiusMm(), footZ);
        view.below(plate.fromMm(), plate.toMm(), cap.rods().get(0).axisZMm() - plate.heightMm() / 2);
        view.left(hoodFootZ, topZ, hood, hood).left(hoodFootZ, cap.rods().get(0).axisZMm(), hood, plate.fromMm());
        view.left(footZ, topZ, sleeve, hood);
        for (PlacedBead bead : outward()) {
            view.left(hoodFootZ + bead.aboveFootMm(), topZ, hood, hood);
        }
        for (int j = 0; j < cap.standoff().rivets().each(); j++) {
            view.left(hoodFootZ, rivetZ(cap.standoff(), j), hood, hood);
        }
        if (cap.sleeve().holes().count() > 0) {
            view.left(footZ, footZ + cap.sleeve().holes().aboveFootMm(), sleeve, sleeve);
        }
    }

    private List<PlacedBead> outward() {
        return cap.hood().flat().beads();
    }
}
