package org.capwright.job;

import org.capwright.units.Length;

/** The existing pipe. */
public final class StackInputs {
    /** Outside diameter of the stack. */
    public static final Input<Length> OUTSIDE_DIAMETER = Input.length("stack.outsideDiameter", "outside diameter")
            .between("4 in", "96 in").help(
                "Outside diameter of the existing stack, from which everything else follows. Put a tape round the "
                    + "stack and divide the girth by 3.1416.");
    /** Slip allowance on the diameter. */
    public static final Input<Length> SLIP = Input.length("stack.slip", "slip").between("0 in", "1 in").or("1/8 in")
            .help("How much wider than the stack the sleeve is, on the diameter, so that it goes on.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("stack", "Stack", OUTSIDE_DIAMETER, SLIP);

    private StackInputs() {
    }
}
