package org.capwright.job;

import org.capwright.units.Angle;
import org.capwright.units.Length;

/** The stop bars across the top of the hood. */
public final class StopInputs {
    /** What they are made of. */
    public static final SheetInputs SHEET = SheetInputs.of("stop", 18);
    /** Opening at which the leaves stop. */
    public static final Input<Angle> OPEN_ANGLE = Input.angle("stop.openAngle", "open angle").between("30 deg", "89.5 deg")
            .or("85 deg").help("Opening at which the bar halts the leaves: short of upright, so that they fall shut by themselves.");
    /** Width of the bar. */
    public static final Input<Length> WIDTH = Input.length("stop.width", "bar width").between("1/4 in", "24 in").orAuto()
            .help("Width of the bar. Auto: what halts the leaves at the open angle. If typed, the open angle follows from it.");
    /** Depth of the bar's legs below the hood's top. */
    public static final Input<Length> DEPTH = Input.length("stop.depth", "depth").between("1/2 in", "12 in").or("1 1/2 in")
            .help(
                "How far the bar's legs hang below the hood's top edge: deeper halts the leaf lower down, where it "
                    + "can't slip past. Measure from the hood's top to the legs' lower edge.");
    /** Gap between the bar's ends and the hood. */
    public static final Input<Length> END_GAP = Input.length("stop.endGap", "end gap").between("0 in", "1/4 in")
            .or("1/32 in").help(
                "Gap between the bar's ends and the hood's inside, closed by the weld: a little, so that the bar goes "
                    + "in and does not push the hood out.");
    /** How it is bent. */
    public static final BendInputs BEND = BendInputs.of("stop");

    /** All of them, in order. */
    static final Group GROUP = Group.of("stop", "Stop", SHEET, OPEN_ANGLE, WIDTH, DEPTH, END_GAP, BEND);

    private StopInputs() {
    }
}
