package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.JobInputs;
import org.capwright.job.RodInputs;
import org.capwright.metal.BlindRivet;
import org.capwright.metal.RivetGrip;
import org.capwright.part.Bushing;
import org.capwright.part.Cap;
import org.capwright.part.PivotRod;
import org.capwright.part.Sleeve;
import org.capwright.part.Standoff;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Lists the hardware of a cap. */
final class Hardware {
    private final Cap cap;
    private final ShopFormat format;

    private Hardware(Cap cap) {
        this.cap = cap;
        this.format = new ShopFormat(cap.job().get(JobInputs.UNITS), cap.job().get(JobInputs.FRACTION));
    }

    static List<HardwareItem> of(Cap cap) {
        Hardware hardware = new Hardware(cap);
        List<HardwareItem> items = new ArrayList<>();
        for (PivotRod rod : cap.rods()) {
            items.add(hardware.rod(rod));
        }
        items.addAll(hardware.bushings());
        items.add(hardware.rivets());
        if (cap.sleeve().holes().count() > 0) {
            items.add(hardware.screws());
        }
        items.add(hardware.sealant());
        return items;
    }

    private HardwareItem rod(PivotRod rod) {
        return new HardwareItem("pivot rod " + rod.number() + ", round bar", 2, rod.metal().word() + ", diameter "
                + length(rod.diameterMm()) + ", cut length " + length(rod.lengthMm()), "", HardwareKind.BAR, rod.diameterMm(),
                rod.lengthMm());
    }

    /** Those of one joint are alike; joints with bushings of the same length share a line. */
    private List<HardwareItem> bushings() {
        return cap.bushings().stream().distinct().map(kind -> bushings(kind, cap.bushingsOf(cap.bushings().indexOf(kind) + 1)))
                .toList();
    }

    private HardwareItem bushings(Bushing bushing, String ofWhich) {
        boolean typed = cap.job().find(RodInputs.BUSHING_OUTSIDE).isPresent();
        long rods = cap.bushings().stream().filter(bushing::equals).count();
        return new HardwareItem("flanged bushing" + ofWhich, (int) (4 * rods), "bore " + length(bushing.boreMm()) + ", outside "
                + length(bushing.outsideMm()) + ", flange " + length(bushing.flangeOutsideMm()) + " by "
                + length(bushing.flangeMm()) + ", length under flange " + length(bushing.lengthMm()),
                typed ? "" : "sizes by rule: measure the part in hand", HardwareKind.BUSHING, bushing.boreMm(), 0);
    }

    private HardwareItem rivets() {
        Standoff standoff = cap.standoff();
        Length diameter = Length.ofMm(standoff.rivets().diameterMm());
        Length stack = Length.ofMm(standoff.sheet().thicknessMm() + cap.hood().sheet().thicknessMm());
        Optional<RivetGrip> grip = RivetGrip.of(diameter, stack);
        String range = grip.map(g -> ", grip " + format.thickness(g.least()) + " to " + format.thickness(g.most())).orElse("");
        return new HardwareItem("blind rivet, standoff to hood", standoff.count() * standoff.rivets().each(),
                length(diameter.mm()) + range, "sheets together " + format.thickness(stack) + ", hole "
                + format.thickness(BlindRivet.holeFor(diameter)), HardwareKind.RIVET, diameter.mm(), 0);
    }

    private HardwareItem screws() {
        Sleeve.FastenerHoles holes = cap.sleeve().holes();
        return new HardwareItem("fastener, sleeve to stack", holes.count(), "hole " + length(holes.diameterMm()), "",
                HardwareKind.FASTENER,
                holes.diameterMm(), 0);
    }

    /** Sealant for every joint that is sealed. */
    private HardwareItem sealant() {
        double run = Joins.of(cap).stream().filter(JoinItem::sealed).mapToDouble(JoinItem::totalMm).sum();
        return new HardwareItem("sealant", 1, "run of " + length(run), "laps, locks and gutter mouths", HardwareKind.SEALANT, 0,
                run);
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}
