package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.part.Leaf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sizes that leaves give for their blanks are those of the drawn outlines. */
class BlankSizeTest {
    @ParameterizedTest
    @CsvSource({"2, 90 deg", "4, 90 deg", "6, 90 deg", "2, 60 deg", "4, 60 deg", "6, 75 deg"})
    void leafBlanks(String count, String angle) {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.of("leaves.count", count, "leaves.flangeAngle", angle, "stack.outsideDiameter", "30 in",
                "hood.aboveRim", "auto", "hood.beads", "auto", "hood.belowRim", "12 in", "gutter.insideWidth", "auto", "gutter.depth", "auto")));
        for (Leaf leaf : cap.leaves()) {
            Blank blank = LeafBlank.of(leaf, Writing.of(cap));
            assertThat(leaf.blankLengthMm()).isCloseTo(blank.lengthMm(), within(1e-9));
            assertThat(leaf.blankWidthMm()).isCloseTo(blank.widthMm(), within(1e-9));
        }
    }
}
