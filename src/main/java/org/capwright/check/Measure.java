package org.capwright.check;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.capwright.air.Air;
import org.capwright.air.LeafAir;
import org.capwright.job.LimitInputs;
import org.capwright.part.Cap;
import org.capwright.swing.Clearance;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;

/** A figure that inputs may be traded for. */
public enum Measure {
    /** Lift pressure of the leaf that opens last; an estimate. */
    LIFT_PRESSURE("lift pressure", Quantity.PRESSURE, cap -> Air.of(cap).leaves().stream().mapToDouble(LeafAir::liftPressurePa).max().orElseThrow()),
    /** Inside width of the gutter that the heels need, at the limit. */
    GUTTER_WIDTH("gutter width that the heels need", Quantity.LENGTH, Measure::gutterWidthMm),
    /** Height of the hood above the rim that the open leaves' tips need, at the limit. */
    HOOD_HEIGHT("hood height above the rim that the tips need", Quantity.LENGTH,
            cap -> Swing.of(cap).tipHeightMm() + cap.job().get(LimitInputs.TIP_COVER).mm()),
    /** Least clearance of any leaf and the hood. */
    LEAST_CLEARANCE("least clearance of leaf and hood", Quantity.LENGTH, cap -> Swing.of(cap).clearances().stream()
            .filter(one -> one.pair() == Pair.LEAF_HOOD).mapToDouble(Clearance::leastMm).min().orElseThrow()),
    /** Mass of the cap. */
    MASS("mass", Quantity.MASS, Cap::massKg);

    private final String words;
    private final Quantity quantity;
    private final ToDoubleFunction<Cap> value;

    Measure(String words, Quantity quantity, ToDoubleFunction<Cap> value) {
        this.words = words;
        this.quantity = quantity;
        this.value = value;
    }

    /**
     * Its name for people.
     *
     * @return such as {@code lift pressure}
     */
    public String words() {
        return words;
    }

    /**
     * What it is.
     *
     * @return the quantity
     */
    public Quantity quantity() {
        return quantity;
    }

    /**
     * The figure of a cap.
     *
     * @param cap the cap
     * @return in the core's unit
     */
    public double of(Cap cap) {
        return value.applyAsDouble(cap);
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static double gutterWidthMm(Cap cap) {
        double spare = Swing.of(cap).clearances().stream().filter(one -> one.pair() == Pair.HEEL_WALL)
                .mapToDouble(Clearance::leastMm).min().orElseThrow() - cap.job().get(LimitInputs.HEEL).mm();
        return cap.gutters().get(0).insideWidthMm() - 2 * spare;
    }
}
