package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.valid.IsValidOp;

/** The notched corners of leaf blanks, over all that the inputs allow. */
class LeafCornersTest {
    private static final long SEED = 5;
    private static final int JOBS = 400;

    @Test
    void everyBlankIsSimpleOrItsJobIsRefused() {
        Random random = new Random(SEED);
        int solved = 0;
        for (int i = 0; i < JOBS; i++) {
            Map<String, String> inputs = extremes(random);
            for (Blank blank : leaves(inputs)) {
                solved++;
                assertThat(new IsValidOp(Polygons.of(blank.outline())).getValidationError())
                        .as("seed %d, job %d, %s: %s", SEED, i, blank.id(), inputs).isNull();
            }
        }
        assertThat(solved).isGreaterThan(JOBS);
    }

    private static List<Blank> leaves(Map<String, String> inputs) {
        try {
            Cap cap = Cap.solve(JobReader.read(JobText.of(inputs)).orThrow());
            return Blanks.of(cap).stream().filter(blank -> blank.id().startsWith("leaf")).toList();
        } catch (RefusedJobException refused) {
            assertThat(refused.getMessage()).contains("leaves.");
            return List.of();
        }
    }

    private static Map<String, String> extremes(Random random) {
        Map<String, String> inputs = new LinkedHashMap<>(Map.of("capwright", "1"));
        int leaves = 2 + 2 * random.nextInt(3);
        inputs.put("leaves.count", Integer.toString(leaves));
        inputs.put("stack.outsideDiameter", 5 * leaves + random.nextInt(60) + " in");
        inputs.put("leaves.flangeAngle", 30 + random.nextInt(61) + " deg");
        inputs.put("leaves.gauge", Integer.toString(12 + random.nextInt(12)));
        inputs.put("leaves.hingeFlange", inches(random, 0.125, 0.5));
        inputs.put("leaves.dripFlange", inches(random, 0.125, 1.6));
        inputs.put("leaves.bend.insideRadius", random.nextBoolean() ? "auto" : inches(random, 0, 0.25));
        inputs.put("leaves.cornerGap", inches(random, 0, 0.25));
        inputs.put("leaves.reliefHole", random.nextBoolean() ? "auto" : inches(random, 0.032, 0.5));
        return inputs;
    }

    private static String inches(Random random, double least, double most) {
        return String.format(Locale.ROOT, "%.4f in", least + random.nextDouble() * (most - least));
    }

    @Test
    void aFlangeShallowerThanItsReliefHolesIsRefused() {
        assertThatThrownBy(() -> Cap.solve(Jobs.kilnWith(Map.of("leaves.hingeFlange", "0.2 in", "leaves.reliefHole", "0.4 in"))))
                .isInstanceOf(RefusedJobException.class)
                .hasMessage("leaves.hingeFlange: \"0.2 in\": must be over 0.2379 in to reach past the relief holes of 0.4000 in."
                        + " Deepen the flange, or make inside radius or relief hole smaller.");
        assertThatThrownBy(() -> Cap.solve(Jobs.kilnWith(Map.of("leaves.reliefHole", "0.04 in"))))
                .isInstanceOf(RefusedJobException.class).hasMessageMatching("leaves\\.reliefHole: \"0\\.04 in\": must be at least"
                        + " (0\\.\\d{4} in) to reach the ends of both flanges\\. Type \\1 or more, or auto\\.");
    }

    @Test
    void leavesAreTheirOwnMirrorImagesAndHaveRoundReliefs() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(900, 30)) {
            for (Leaf leaf : drawn.cap().leaves()) {
                Blank blank = Blanks.of(drawn.cap()).stream().filter(b -> b.id().equals("leaf-" + leaf.number())).findFirst().orElseThrow();
                Geometry outline = Polygons.of(blank.outline());
                Geometry mirrored = AffineTransformation.reflectionInstance(1, 0).transform(outline);
                assertThat(outline.symDifference(mirrored).getArea()).as(drawn.toString()).isLessThan(1e-4);
                assertThat(reliefs(blank, leaf)).as(drawn.toString()).hasSize(leaf.freeCorner().isPresent() ? 4 : 2);
            }
        }
    }

    /** Where three arcs of the relief hole's radius should be: round the points where bend lines meet. */
    private static List<Vec2> reliefs(Blank blank, Leaf leaf) {
        List<Vec2> centers = new ArrayList<>();
        for (Segment segment : blank.outline().segments()) {
            if (segment instanceof Segment.Arc arc && arc.radius() < leaf.slab().radiusMm() / 4) {
                assertThat(arc.radius()).isCloseTo(leaf.reliefHoleMm() / 2, within(1e-6));
                assertThat(arc.center().norm()).isCloseTo(leaf.curveBendRadiusMm(), within(1e-6));
                assertThat(Math.abs(arc.sweepRad())).isBetween(Math.PI / 2, 2 * Math.PI);
                centers.add(arc.center());
            }
        }
        return centers;
    }
}
