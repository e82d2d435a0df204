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

    /**
     * The grip for a rivet and a stack.
     *
     * @param diameter nominal diameter
     * @param stack total thickness of the sheets
     * @return the grip; empty where the table has none
     */
    public static Optional<RivetGrip> of(Length diameter, Length stack) {
        String size = Long.toString(Math.round(diameter.mm() / THIRTY_SECOND_MM));
        return GRIPS.stream().filter(grip -> grip.code.startsWith(size) && grip.least.compareTo(stack) <= 0
                && grip.most.compareTo(stack) >= 0).findFirst();
    }
}
