package org.capwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.JobInputs;
import org.capwright.job.LimitInputs;
import org.capwright.metal.BendRadius;
import org.capwright.metal.BlindRivet;
import org.capwright.metal.SeamKind;
import org.capwright.metal.SpotWeld;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Leaf;
import org.capwright.part.Sheet;
import org.capwright.part.Standoff;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Checks of the sheet-metal work: flanges, bends, shrinking, laps, rivets. */
final class SheetChecks {
    private static final double SHRINK_BAND = 0.003;
    private final Cap cap;
    private final CapJob job;
    private final ShopFormat format;
    private final List<Check> checks = new ArrayList<>();

    private SheetChecks(Cap cap) {
        this.cap = cap;
        this.job = cap.job();
        this.format = new ShopFormat(job.get(JobInputs.UNITS), job.get(JobInputs.FRACTION));
    }

    static List<Check> of(Cap cap) {
        SheetChecks checks = new SheetChecks(cap);
        checks.flanges();
        checks.bends();
        cap.leaves().forEach(checks::shrink);
        checks.lap("sleeve", cap.sleeve().flat(), cap.sleeve().sheet());
        checks.lap("hood", cap.hood().flat(), cap.hood().sheet());
        checks.rivets();
        return checks.checks;
    }

    private void flanges() {
        Leaf leaf = cap.leaves().get(0);
        double least = 4 * leaf.sheet().thicknessMm() + leaf.bend().insideRadiusMm();
        Limit limit = Limit.atLeast(least, 0, "brake minimum 4 t + r: common practice, no source");
        checks.add(Check.of("flange.hinge", "hinge flange depth", Quantity.LENGTH, leaf.hingeFlangeMm(), limit));
        checks.add(Check.of("flange.curve", "drip flange depth", Quantity.LENGTH, leaf.curveFlangeMm(), limit));
    }

    private void bends() {
        Leaf leaf = cap.leaves().get(0);
        bend("leaves", "leaf bend radius", leaf.sheet(), leaf.bend().insideRadiusMm());
        bend("gutter", "gutter bend radius", cap.gutters().get(0).sheet(), cap.gutters().get(0).bend().insideRadiusMm());
        bend("stop", "stop bar bend radius", cap.stops().get(0).sheet(), cap.stops().get(0).bend().insideRadiusMm());
        bend("standoffs", "standoff bend radius", cap.standoff().sheet(), cap.standoff().bend().insideRadiusMm());
    }

    /** Foul under the thickness; where the job holds to the design table, tight under the table's radius. */
    private void bend(String part, String words, Sheet sheet, double radiusMm) {
        double thickness = sheet.thicknessMm();
        Optional<Length> table = BendRadius.of(sheet.metal(), Length.ofMm(thickness));
        boolean held = job.get(LimitInputs.BEND_RADIUS) == LimitInputs.BendRadii.DESIGN_TABLE;
        double band = held ? table.map(radius -> Math.max(0, radius.mm() - thickness)).orElse(0.0) : 0;
        String more = table.map(radius -> "; a conservative design table after AISI guidelines "
                + "(confirmed in a published copy) asks " + Quantity.LENGTH.words(radius.mm(), format) + " of "
                + BendRadius.column(sheet.metal()))
                .orElse("; the design table ends at 0.100 in");
        checks.add(Check.of("bend." + part, words, Quantity.LENGTH, radiusMm,
                Limit.atLeast(thickness, band,
                        "inside radius at least the thickness, annealed sheet: FAA AC 43.13-1B (confirmed)" + more)));
    }

    private void shrink(Leaf leaf) {
        checks.add(Check.of("leaf." + leaf.number() + ".shrink", "shrink at leaf " + leaf.number() + "'s lip", Quantity.RATIO,
                leaf.shrink().strain(), Limit.atMost(job.get(LimitInputs.SHRINK), SHRINK_BAND,
                "a guess: no published limit for hand shrinking found")));
    }

    private void lap(String part, CylinderFlat flat, Sheet sheet) {
        Optional<SpotWeld> row = SpotWeld.forThickness(Length.ofMm(sheet.thicknessMm()));
        if (flat.seam().kind() == SeamKind.LAP && row.isPresent()) {
            checks.add(Check.of(part + ".lap", part + " lap", Quantity.LENGTH, flat.seam().widthMm(),
                    Limit.atLeast(row.get().leastOverlap().mm(), 0,
                    "spot-weld table, RWMA / AWS C1.1 lineage, uncoated basis: prove with a test coupon")));
        }
    }

    private void rivets() {
        Standoff standoff = cap.standoff();
        Length rivet = Length.ofMm(standoff.rivets().diameterMm());
        String source = "FAA AC 43.13-1B, written for solid rivets: common practice for blind ones";
        double vertical = standoff.rivetHeightMm(0);
        checks.add(Check.of("rivet.edge", "rivet to edge", Quantity.LENGTH, Math.min(vertical, standoff.outerFlangeMm() / 2),
                Limit.atLeast(BlindRivet.leastEdgeDistance(rivet).mm(), 0, source)));
        if (standoff.rivets().each() > 1) {
            checks.add(Check.of("rivet.pitch", "rivet pitch", Quantity.LENGTH, standoff.heightMm() / standoff.rivets().each(),
                    Limit.atLeast(BlindRivet.leastPitch(rivet).mm(), 0, source)));
        }
    }
}
