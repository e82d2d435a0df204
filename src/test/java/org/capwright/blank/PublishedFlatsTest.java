package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.capwright.metal.Bend;
import org.capwright.metal.Edge;
import org.capwright.metal.Seam;
import org.capwright.metal.SeamKind;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Shrink;
import org.junit.jupiter.api.Test;

/** Flat sizes against published examples. */
class PublishedFlatsTest {
    /** Constant-area shallow cup, D = sqrt(d^2 + 4 d h); the published example d 25, h 15 gives 46.1 mm. */
    @Test
    void constantAreaCup() {
        double d = 25;
        double h = 15;
        // a bend with next to no radius and thickness: disc and wall only
        Bend sharp = new Bend(Math.PI / 2, 1e-9, 1e-9, 0.5);
        double kept = d / 2 + h;
        double sameArea = kept - Shrink.growthMm(sharp, d / 2, h);
        assertThat(2 * sameArea).isCloseTo(46.1, within(0.05));
        assertThat(2 * sameArea).isCloseTo(Math.sqrt(d * d + 4 * d * h), within(1e-6));
    }

    /** The same formula, r 12 in, lip 1/2 in: 12.490 in against 12.500 in. */
    @Test
    void constantAreaLeaf() {
        Bend sharp = new Bend(Math.PI / 2, 1e-9, 1e-9, 0.5);
        assertThat(12.5 - Shrink.growthMm(sharp, 12 * 25.4, 0.5 * 25.4) / 25.4).isCloseTo(12.490, within(0.0005));
    }

    /** Outside diameter 650 mm, thickness 10 mm: mean 640, length 2010.6 mm (TAFE NSW text). */
    @Test
    void cylinder() {
        CylinderFlat flat = new CylinderFlat((650 - 10) / 2.0, 100, new Seam(SeamKind.BUTT, 0), 1, 0, Edge.PLAIN, Edge.PLAIN, List.of(), 0);
        assertThat(flat.lengthMm()).isCloseTo(2010.6, within(0.05));
    }
}
