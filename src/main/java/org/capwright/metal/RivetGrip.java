package org.capwright.metal;

import java.util.List;
import java.util.Optional;
import org.capwright.units.Length;

/**
 * A blind rivet's grip: the stack of sheets that it pulls together.
 *
 * @param code size in 32nds of an inch and grip in 16ths, such as 62
 * @param least thinnest stack
 * @param most thickest stack
 */
public record RivetGrip(String code, Length least, Length most) {
    /** The grips there are; sources in the resource's head. */
    public static final List<RivetGrip> GRIPS = Table.read("rivet-grips.txt").rows().stream()
            .map(fields -> new RivetGrip(fields.get(0), Length.ofInches(Double.parseDouble(fields.get(1))),
                    Length.ofInches(Double.parseDouble(fields.get(2))))).toList();
    private static final double THIRTY_SECOND_MM = Length.MM_PER_INCH / 32;
    private static final double SAME_SIZE_MM = 0.06;

    /**
     * The grip for a rivet and a stack. The table is printed in thousandths of an inch, so the stack is taken to the nearest
     * thousandth: its rows leave no gaps between them.
     *
     * @param diameter nominal diameter
     * @param stack total thickness of the sheets
     * @return the grip; empty where the table has none, as for metric sizes that are no inch sizes
     */
    public static Optional<RivetGrip> of(Length diameter, Length stack) {
        long size = Math.round(diameter.mm() / THIRTY_SECOND_MM);
        if (Math.abs(diameter.mm() - size * THIRTY_SECOND_MM) >= SAME_SIZE_MM) {
            return Optional.empty();
        }
        long thousandths = thousandths(stack);
        return GRIPS.stream().filter(grip -> grip.isOf(size) && thousandths(grip.least) <= thousandths
                && thousandths <= thousandths(grip.most)).findFirst();
    }

    private boolean isOf(long size) {
        return Integer.parseInt(code) / 10 == size;
    }

    private static long thousandths(Length length) {
        return Math.round(length.inches() * 1000);
    }
}
