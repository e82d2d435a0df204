package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.units.Length;
import org.junit.jupiter.api.Test;

/** The trade handbook's worked figures of the swing (inches). */
class SwingFiguresTest {
    @Test
    void fourLeaves() {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.ofEntries(
                Map.entry("stack.outsideDiameter", "36 in"), Map.entry("stack.slip", "3/16 in"),
                Map.entry("sleeve.metal", "galvanized"), Map.entry("sleeve.gauge", "16"), Map.entry("leaves.count", "4"),
                Map.entry("hood.annulus", "2.5 in"), Map.entry("rods.diameter", "5/8 in"), Map.entry("rods.offset", "5/16 in"),
                Map.entry("leaves.firstJoint", "9.3484 in"), Map.entry("bushings.bore", "5/8 in"),
                Map.entry("bushings.outside", "3/4 in"), Map.entry("gutter.insideWidth", "auto"))));
        Swing swing = Swing.of(cap);
        Clearance inner = swing.least(Pair.LEAF_HOOD, 1);
        Clearance outer = swing.least(Pair.LEAF_HOOD, 2);
        assertThat(Length.ofMm(inner.leastMm()).inches()).isCloseTo(1.9138, within(0.00006));
        assertThat(Length.ofMm(outer.leastMm()).inches()).isCloseTo(1.3755, within(0.00006));
        assertThat(Math.toDegrees(inner.openRad())).isCloseTo(85, within(0.001));
    }

    /** At the worked stop angle the worked bar, 9 1/2 in over the rim, is above the leaf's end: the leaf would pass it by. */
    @Test
    void theWorkedStopBarMissesTheLeaf() {
        StopContact contact = Swing.of(Cap.solve(Jobs.kiln())).stops().get(0);
        assertThat(contact.marginMm()).isNegative();
        assertThat(Math.toDegrees(contact.openRad())).isCloseTo(85, within(1e-9));
    }
}
