package org.capwright.check;

import java.util.ArrayList;
import java.util.List;
import org.capwright.job.AirInputs;
import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.LimitInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StockInputs;
import org.capwright.metal.Metal;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.PlacedBead;
import org.capwright.part.Sleeve;
import org.capwright.part.Standoff;
import org.capwright.units.Length;

/** Checks of what fits where: slip, cover, drain, play, holes, seams, stock, metal. */
final class FitChecks {
    private static final String COMMON = "common practice, no source";

    private final Cap cap;
    private final CapJob job;
    private final List<Check> checks = new ArrayList<>();

    private FitChecks(Cap cap) {
        this.cap = cap;
        this.job = cap.job();
    }

    static List<Check> of(Cap cap) {
        FitChecks checks = new FitChecks(cap);
        checks.least("slip", "slip of the sleeve", checks.mm(StackInputs.SLIP), LimitInputs.SLIP);
        checks.cover();
        checks.least("rod.play", "end play on each side", checks.mm(RodInputs.END_PLAY), LimitInputs.END_PLAY);
        checks.holes();
        checks.seam("sleeve", cap.sleeve().flat());
        checks.seam("hood", cap.hood().flat());
        checks.stock();
        checks.corrosion();
        return checks.checks;
    }

    /** A feature within the seam's allowance would lie in both ends, or across one: the limit is never less than half of it. */
    private void seam(String part, CylinderFlat flat) {
        double typed = mm(LimitInputs.SEAM);
        double half = flat.seam().allowanceMm() / 2;
        least(part + ".seam", part + " seam to features", flat.seamClearMm(), Math.max(typed, half),
                half > typed ? "half of what the seam takes: nothing may lie across an end of the blank" : COMMON);
    }

    /** Whether blanks fit the largest sheet, either way round. */
    private void stock() {
        stock("sleeve", cap.sleeve().flat().lengthMm(), cap.sleeve().flat().widthMm());
        stock("hood", cap.hood().flat().lengthMm(), cap.hood().flat().widthMm());
        cap.leaves().forEach(leaf -> stock("leaf-" + leaf.number(), leaf.blankLengthMm(), leaf.blankWidthMm()));
        cap.gutters().forEach(gutter -> stock("gutter-" + gutter.number(), gutter.blankLengthMm(), gutter.flat().widthMm()));
        cap.stops().forEach(bar -> stock("stop-bar-" + bar.number(), bar.blankLengthMm(), bar.flat().widthMm()));
    }

    private void stock(String part, double lengthMm, double widthMm) {
        double sheetLength = job.get(StockInputs.SHEET_LENGTH).mm();
        double sheetWidth = job.get(StockInputs.SHEET_WIDTH).mm();
        double spare = Math.min(Math.max(sheetLength, sheetWidth) - Math.max(lengthMm, widthMm),
                Math.min(sheetLength, sheetWidth) - Math.min(lengthMm, widthMm));
        checks.add(Check.of("stock." + part, part.replace('-', ' ') + " on the sheet, to spare", Quantity.LENGTH, spare,
                Limit.atLeast(0, 0, "the sheet size typed for the job")));
    }

    private void cover() {
        double cover = cap.leaves().get(0).slab().radiusMm() - cap.leaves().get(0).sheet().thicknessMm() - cap.sleeve().outsideRadiusMm();
        least("leaf.cover", "cover", cover, LimitInputs.COVER);
        double edge = cap.leaves().get(0).slab().radiusMm();
        least("annulus.drain", "annulus drain past the closed leaves", cap.hood().insideRadiusMm() - edge, LimitInputs.DRAIN);
    }

    private void holes() {
        Standoff standoff = cap.standoff();
        double foot = cap.hood().belowRimMm() + standoff.topZMm() - standoff.heightMm();
        double hole = standoff.rivets().holeMm() / 2;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < standoff.rivets().each(); i++) {
            nearest = Math.min(nearest, toBeads(cap.hood().flat(), foot + standoff.rivetHeightMm(i), hole));
        }
        for (Doubler plate : cap.doublers()) {
            double axis = cap.hood().belowRimMm() + cap.rods().get(plate.number() - 1).axisZMm();
            nearest = Math.min(nearest, toBeads(cap.hood().flat(), axis, plate.heightMm() / 2));
        }
        beads("hood.holes", "hood holes and plates to beads", nearest);
        least("hood.rivetFoot", "lowest rivet over the hood's foot", foot + standoff.rivetHeightMm(0),
                2 * standoff.rivets().diameterMm(),
                "edge distance of two diameters, FAA AC 43.13-1B, written for solid rivets");
        Sleeve.FastenerHoles holes = cap.sleeve().holes();
        if (holes.count() > 0) {
            beads("sleeve.holes", "fastener holes to the stop bead",
                    toBeads(cap.sleeve().flat(), holes.aboveFootMm(), holes.diameterMm() / 2));
            least("sleeve.holeFoot", "fastener holes over the foot", holes.aboveFootMm(), 2 * holes.diameterMm(),
                    "edge distance of two diameters, FAA AC 43.13-1B, written for solid rivets");
        }
    }

    private void beads(String id, String words, double gapMm) {
        if (Double.isFinite(gapMm)) {
            least(id, words, gapMm, LimitInputs.HOLE_BEAD);
        }
    }

    private static double toBeads(CylinderFlat flat, double aboveFootMm, double halfMm) {
        double nearest = Double.POSITIVE_INFINITY;
        for (PlacedBead bead : flat.beads()) {
            nearest = Math.min(nearest, Math.abs(bead.aboveFootMm() - aboveFootMm) - bead.bead().widthMm() / 2 - halfMm);
        }
        return nearest;
    }

    /** Corrosive fume asks for stainless throughout. */
    private void corrosion() {
        if (job.get(AirInputs.DUTY) == AirInputs.Duty.CORROSIVE) {
            long other = List.of(cap.sleeve().sheet(), cap.hood().sheet(), cap.leaves().get(0).sheet(),
                    cap.gutters().get(0).sheet(),
                    cap.stops().get(0).sheet(), cap.standoff().sheet()).stream().filter(sheet -> !stainless(sheet.metal())).count();
            checks.add(Check.of("duty.metal", "sheet parts that are not stainless", Quantity.COUNT, other,
                    Limit.atMost(0, 0, "corrosive duty: common practice, no source; ask for the fume's own table")));
        }
    }

    private static boolean stainless(Metal metal) {
        return metal == Metal.STAINLESS_304 || metal == Metal.STAINLESS_316;
    }

    private void least(String id, String words, double valueMm, Input<Length> limit) {
        least(id, words, valueMm, mm(limit), COMMON);
    }

    private void least(String id, String words, double valueMm, double limitMm, String source) {
        checks.add(Check.of(id, words, Quantity.LENGTH, valueMm, Limit.atLeast(limitMm, 0, source)));
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }
}
