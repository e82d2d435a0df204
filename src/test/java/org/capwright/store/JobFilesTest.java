package org.capwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.capwright.job.JobText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobFilesTest {
    @TempDir
    private Path folder;

    static Stream<Path> demoJobs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-jobs"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("demoJobs")
    void demoJobsComeBackUnchanged(Path demo) {
        JobText text = JobFiles.read(demo);
        Path copy = folder.resolve("copy.json");

        JobFiles.write(copy, text);

        assertThat(JobFiles.read(copy)).isEqualTo(text);
        assertThat(JobStamp.of(JobFiles.read(copy))).isEqualTo(JobStamp.of(text));
        assertThat(folder).isDirectoryContaining(file -> file.equals(copy)).satisfies(JobFilesTest::holdsOneFile);
    }

    @Test
    void objectsAndListsAreFlattened() throws IOException {
        assertThat(read("""
                {"leaves": {"cover": "1/2 in", "shrink": {"kappa": 0.50}},
                 "hood": {"beads": [{"fromTop": "1 in"}, {"width": 1e-1}]}, "sleeve": {}}
                """).texts()).containsExactly(Map.entry("leaves.cover", "1/2 in"), Map.entry("leaves.shrink.kappa", "0.50"),
                Map.entry("hood.beads[0].fromTop", "1 in"), Map.entry("hood.beads[1].width", "1e-1"));
    }

    @Test
    void whatIsNoTextIsPassedOnForTheReaderToRefuse() throws IOException {
        assertThat(read("{\"leaves\": {\"cover\": null, \"gap\": true}, \"x\": {}, \"hood\": {\"beads\": [{}]}}").texts())
                .containsExactly(Map.entry("leaves.cover", "null"), Map.entry("leaves.gap", "true"), Map.entry("x", "{}"),
                        Map.entry("hood.beads[0]", "{}"));
        assertThat(read("{\"hood\": {\"beads\": []}}").at("hood.beads")).contains(JobText.EMPTY_LIST);
    }

    @Test
    void writesInTheDeclaredOrder() throws IOException {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("wether", "rain");
        typed.put("hood.beads[1].fromTop", "9 in");
        typed.put("hood.beads[0].width", "1/2 in");
        typed.put("hood.beads[0].fromTop", "1.50");
        typed.put("leaves.count", "4");
        typed.put("leaves.gauge", "020");
        typed.put("stack.outsideDiameter", "18 in");
        typed.put("capwright", "1");
        Path file = folder.resolve("job.json");

        JobFiles.write(file, JobText.of(typed));

        assertThat(Files.readString(file)).isEqualTo("""
                {
                  "capwright": 1,
                  "stack": {
                    "outsideDiameter": "18 in"
                  },
                  "hood": {
                    "beads": [
                      {
                        "fromTop": "1.50",
                        "width": "1/2 in"
                      },
                      {
                        "fromTop": "9 in"
                      }
                    ]
                  },
                  "leaves": {
                    "count": 4,
                    "gauge": "020"
                  },
                  "wether": "rain"
                }
                """);
    }

    @Test
    void anEmptyListStaysOne() throws IOException {
        Path file = folder.resolve("job.json");
        JobFiles.write(file, JobText.of(Map.of("hood.beads", JobText.EMPTY_LIST)));

        assertThat(Files.readString(file)).contains("\"beads\": []");
        assertThat(JobFiles.read(file).at("hood.beads")).contains(JobText.EMPTY_LIST);
    }

    @Test
    void lettersOfEveryScriptAndQuotesComeBack() {
        Path file = folder.resolve("job.json");
        JobText text = JobText.of(Map.of("job.name", "Töpferei \"Ωmega\" 窯\n\tzwei", "job.notes", "24 1/2\" \\ 18′"));
        JobFiles.write(file, text);

        assertThat(JobFiles.read(file)).isEqualTo(text);
    }

    @Test
    void malformedTextIsRefusedWithItsPlace() {
        assertThatThrownBy(() -> read("{\n  \"leaves\": {\n    \"cover\" \"1/2 in\"\n  }\n}"))
                .isInstanceOfSatisfying(UnreadableJobException.class, problem -> {
                    assertThat(problem.line()).isEqualTo(3);
                    assertThat(problem.column()).isEqualTo(13);
                })
                .hasMessageContaining("bad.json, line 3, column 13: this is not well-formed JSON (");
    }

    @Test
    void aFieldIsNamedOnce() {
        assertThatThrownBy(() -> read("{\"leaves\": {\"gap\": 1,\n \"gap\": 2}}")).isInstanceOf(UnreadableJobException.class)
                .hasMessageEndingWith("bad.json, line 2, column 2: the field leaves.gap stands here a second time.");
        assertThatThrownBy(() -> read("{\"leaves\": {},\n \"leaves\": {}}")).isInstanceOf(UnreadableJobException.class)
                .hasMessageEndingWith("line 2, column 2: the field leaves stands here a second time.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "7", "{", "{\"a\": [1, 2", "{} {}", "{\"stack.slip\": 1}", "{\"hood\": {\"beads[0]\": 1}}",
        "{\"job\": {\"name\": null}}", "{\"job\": {\"name\": []}}", "{'a': 1}", "{\"a\": NaN}", "{\"a\": 01}", "{\"a\": \"\u0001\"}"})
    void otherThingsAreRefusedToo(String bad) {
        assertThatThrownBy(() -> read(bad)).isInstanceOf(UnreadableJobException.class).hasMessageContaining("bad.json, line ");
    }

    @Test
    void deepNestingIsRefused() {
        assertThatThrownBy(() -> read("{\"a\":".repeat(5000))).isInstanceOf(UnreadableJobException.class);
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            byte[] bytes = new byte[random.nextInt(40)];
            random.nextBytes(bytes);
            Path file = Files.write(folder.resolve("bytes.json"), bytes);
            assertThatThrownBy(() -> JobFiles.read(file)).as("seed 7, round " + i).isInstanceOf(UnreadableJobException.class);
        }
        Path file = Files.write(folder.resolve("bytes.json"), new byte[] {0, 0, (byte) 0xFF, (byte) 0xFE, 1, 2, 3, 4});
        assertThatThrownBy(() -> JobFiles.read(file)).isInstanceOf(UnreadableJobException.class);
    }

    @Test
    void aMissingFileIsTold() {
        Path file = folder.resolve("none.json");

        assertThatThrownBy(() -> JobFiles.read(file)).isInstanceOf(StoreException.class)
                .hasMessage(file + " could not be read: there is no such file or folder.");
    }

    @Test
    void aMissingFolderIsTold() {
        Path file = folder.resolve("none").resolve("job.json");

        assertThatThrownBy(() -> JobFiles.write(file, JobText.of(Map.of()))).isInstanceOf(StoreException.class)
                .hasMessage(file + " could not be written: there is no such file or folder.");
    }

    @Test
    void aValueThatIsAlsoAGroupIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("job.json"), "old");
        JobText both = JobText.of(Map.of("leaves", "x", "leaves.cover", "1 in"));

        assertThatThrownBy(() -> JobFiles.write(file, both)).isInstanceOf(StoreException.class)
                .hasMessage("The job can't be written: leaves is both a value and a group of values.");
        assertThat(file).hasContent("old");
    }

    private JobText read(String json) throws IOException {
        return JobFiles.read(Files.writeString(folder.resolve("bad.json"), json));
    }

    private static void holdsOneFile(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }
}
