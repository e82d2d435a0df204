package org.capwright.export.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.capwright.blank.Blanks;
import org.capwright.blank.RandomCaps;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every cap's figures have the published ids and units, and are finite numbers. */
class FiguresTest {
    @Test
    void kilnInJson() throws IOException {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.of("job.revision", "B")));
        JsonNode root = JsonMapper.builder().build().readTree(FiguresJson.of(cap, "0123abcd"));
        assertThat(root.get("job").get("name").asString()).isEqualTo("Kiln room, pottery school");
        assertThat(root.get("job").get("revision").asString()).isEqualTo("B");
        assertThat(root.get("job").get("stamp").asString()).isEqualTo("0123abcd");
        assertThat(root.get("checks")).isNotEmpty();
        Map<String, String> units = new HashMap<>();
        for (JsonNode figure : root.get("figures")) {
            assertThat(figure.get("value").isNumber()).as(figure.toString()).isTrue();
            assertThat(units.put(figure.get("id").asString(), figure.get("unit").asString())).as("once: " + figure).isNull();
        }
        for (String line : ids()) {
            assertThat(units).as(line).containsEntry(id(line, 1), unit(line));
        }
        // three beads: the sleeve's stop bead and two on the hood
        assertThat(units).containsKeys("bead.1.takeUp", "bead.2.takeUp", "bead.3.takeUp").doesNotContainKey("bead.4.takeUp");
    }

    @Test
    void swingAirAndChecksInJson() {
        JsonNode root = JsonMapper.builder().build().readTree(FiguresJson.of(Cap.solve(Jobs.kiln()), "0123abcd"));
        Map<String, String> units = new HashMap<>();
        root.get("figures").forEach(figure -> units.put(figure.get("id").asString(), figure.get("unit").asString()));
        assertThat(units).contains(Map.entry("swing.leaf.1.hood.least", "mm"), Map.entry("swing.leaf.1.hood.opening", "deg"),
                Map.entry("swing.heel.1.wall.least", "mm"), Map.entry("swing.heel.1.floor.least", "mm"), Map.entry("swing.tip.height", "mm"),
                Map.entry("stop.1.contactArm", "mm"), Map.entry("air.density", "kg/m3"), Map.entry("air.velocity", "m/s"),
                Map.entry("air.velocityPressure", "Pa"), Map.entry("air.liftPressure.1", "Pa"), Map.entry("air.float.1.jet", "deg"),
                Map.entry("air.float.1.drag", "deg"), Map.entry("air.flowToStop.1", "m3/s"), Map.entry("air.freeArea", "m2"),
                Map.entry("air.blockageLoss", "Pa"), Map.entry("closing.1.moment", "N m"), Map.entry("closing.1.ratio", ""),
                Map.entry("rod.1.sag", "mm"), Map.entry("rod.1.stress", "MPa"));
        for (JsonNode check : root.get("checks")) {
            assertThat(check.propertyNames()).as(check.toString()).contains("id", "verdict", "value", "limit", "margin", "unit", "source");
            assertThat(check.has("remedy")).as(check.toString()).isEqualTo(!check.get("verdict").asString().equals("clear"));
        }
        // the worked stop bar misses the leaf: a foul with a place
        JsonNode foul = root.get("checks").valueStream().filter(check -> check.get("id").asString().equals("stop.1.contact")).findFirst().orElseThrow();
        assertThat(foul.get("verdict").asString()).isEqualTo("foul");
        assertThat(foul.get("at").propertyNames()).containsExactly("x", "y", "z", "opening");
        assertThat(foul.get("remedy").asString()).startsWith("deepen the stop bar to ");
    }

    @Test
    void everyNumberedPartOfRandomCaps() throws IOException {
        for (RandomCaps.Drawn drawn : RandomCaps.of(50, 40)) {
            Map<String, Figure> figures = new HashMap<>();
            for (Figure figure : CapFigures.of(drawn.cap(), Blanks.of(drawn.cap()))) {
                assertThat(figure.value()).as(figure + ", " + drawn).isFinite();
                assertThat(figures.put(figure.id(), figure)).as(figure + ", " + drawn).isNull();
            }
            for (String line : ids()) {
                int count = line.contains(".N.") && !line.startsWith("bead") ? drawn.cap().leaves().size() : 1;
                for (int n = 1; n <= count; n++) {
                    assertThat(figures).as(line + ", " + drawn).containsKey(id(line, n));
                    assertThat(figures.get(id(line, n)).unit()).as(line + ", " + drawn).isEqualTo(unit(line));
                }
            }
        }
    }

    private static String id(String line, int number) {
        return line.split(" ")[0].replace(".N.", "." + number + ".");
    }

    private static String unit(String line) {
        return line.contains(" ") ? line.split(" ")[1] : "";
    }

    private static List<String> ids() throws IOException {
        try (InputStream stream = FiguresTest.class.getResourceAsStream("ids.txt")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).toList();
        }
    }
}
