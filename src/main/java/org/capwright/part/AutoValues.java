package org.capwright.part;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.capwright.job.BendInputs;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.LeafInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.SheetInputs;
import org.capwright.job.SleeveInputs;
import org.capwright.job.StandoffInputs;
import org.capwright.job.StopInputs;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/** What inputs left to a rule came to in a solved cap. */
public final class AutoValues {
    private final Cap cap;
    private final Map<String, Object> values = new LinkedHashMap<>();

    private AutoValues(Cap cap) {
        this.cap = cap;
    }

    /**
     * The value of an input in a solved cap: typed, default, or what its rule came to.
     *
     * @param cap the cap
     * @param input the input
     * @param <T> type of the value
     * @return the value; empty where a rule leaves it without one (a measured thickness that was not typed)
     */
    @SuppressWarnings("unchecked") // each path below is given a value of its input's type
    public static <T> Optional<T> of(Cap cap, Input<T> input) {
        Optional<T> typed = cap.job().find(input);
        return typed.isPresent() ? typed : Optional.ofNullable((T) of(cap).get(input.path()));
    }

    /**
     * What every rule came to.
     *
     * @param cap the cap
     * @return values by path, also of inputs that were typed
     */
    public static Map<String, Object> of(Cap cap) {
        AutoValues auto = new AutoValues(cap);
        auto.cylinders();
        auto.leaves();
        auto.rods();
        auto.channels();
        auto.standoffs();
        return auto.values;
    }

    private void cylinders() {
        put(SleeveInputs.PIECES, cap.sleeve().flat().pieces());
        put(SleeveInputs.SEAM.azimuth(), Angle.ofRad(cap.sleeve().flat().seamAzimuthRad()));
        cap.sleeve().flat().beads().stream().findFirst()
                .ifPresent(bead -> put(SleeveInputs.STOP_BEAD_FROM_FOOT, Length.ofMm(bead.aboveFootMm())));
        put(HoodInputs.PIECES, cap.hood().flat().pieces());
        put(HoodInputs.SEAM.azimuth(), Angle.ofRad(cap.hood().flat().seamAzimuthRad()));
        put(HoodInputs.ABOVE_RIM, Length.ofMm(cap.hood().aboveRimMm()));
        put(SleeveInputs.SHEET, cap.sleeve().sheet());
        put(HoodInputs.SHEET, cap.hood().sheet());
    }

    private void leaves() {
        Leaf leaf = cap.leaves().get(0);
        put(LeafInputs.SHEET, leaf.sheet());
        put(LeafInputs.BEND, new BendRule(leaf.bend().insideRadiusMm(), leaf.bend().thicknessMm(), leaf.bend().neutralFactor()));
        put(LeafInputs.RELIEF_HOLE, Length.ofMm(leaf.reliefHoleMm()));
        if (cap.joints().size() > 1) {
            put(LeafInputs.FIRST_JOINT, Length.ofMm(cap.joints().get(1)));
        }
        if (cap.joints().size() > 2) {
            put(LeafInputs.SECOND_JOINT, Length.ofMm(cap.joints().get(2)));
        }
    }

    private void rods() {
        put(RodInputs.OFFSET, Length.ofMm(cap.leaves().get(0).rodAxisMm() - cap.leaves().get(0).slab().hingeEdgeMm()));
        put(RodInputs.WASHER_OUTSIDE, Length.ofMm(cap.washer().outsideMm()));
        put(RodInputs.BUSHING_BORE, Length.ofMm(cap.bushing().boreMm()));
        put(RodInputs.BUSHING_OUTSIDE, Length.ofMm(cap.bushing().outsideMm()));
        put(RodInputs.BUSHING_FLANGE_OUTSIDE, Length.ofMm(cap.bushing().flangeOutsideMm()));
        put(RodInputs.BUSHING_FLANGE_THICKNESS, Length.ofMm(cap.bushing().flangeMm()));
        put(RodInputs.BUSHING_LENGTH, Length.ofMm(cap.bushings().stream().mapToDouble(Bushing::lengthMm).max().orElseThrow()));
        put(RodInputs.DIAMETER, Length.ofMm(cap.rods().get(0).diameterMm()));
    }

    private void channels() {
        Gutter gutter = cap.gutters().get(0);
        put(GutterInputs.SHEET, gutter.sheet());
        put(GutterInputs.BEND, gutter.bend());
        put(GutterInputs.INSIDE_WIDTH, Length.ofMm(gutter.insideWidthMm()));
        put(GutterInputs.DEPTH, Length.ofMm(cap.gutters().stream().mapToDouble(Gutter::depthMm).max().orElseThrow()));
        StopBar bar = cap.stops().get(0);
        put(StopInputs.SHEET, bar.sheet());
        put(StopInputs.BEND, bar.bend());
        put(StopInputs.WIDTH, Length.ofMm(2 * bar.halfWidthMm()));
        put(StopInputs.OPEN_ANGLE, Angle.ofRad(cap.stopRad()));
    }

    private void standoffs() {
        Standoff standoff = cap.standoff();
        put(StandoffInputs.SHEET, standoff.sheet());
        put(StandoffInputs.BEND, standoff.bend());
        put(StandoffInputs.COUNT, standoff.count());
        put(StandoffInputs.FIRST, Angle.ofRad(standoff.firstRad()));
        put(StandoffInputs.BELOW_RIM, Length.ofMm(-standoff.topZMm()));
    }

    private void put(SheetInputs inputs, Sheet sheet) {
        put(inputs.thickness(), Length.ofMm(sheet.thicknessMm()));
    }

    private void put(BendInputs inputs, BendRule bend) {
        put(inputs.insideRadius(), Length.ofMm(bend.insideRadiusMm()));
        put(inputs.k(), bend.neutralFactor());
    }

    private <T> void put(Input<T> input, T value) {
        values.put(input.path(), value);
    }
}
