package org.capwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands stamp and printer. */
class StampAndPrinterTest {
    private static final String DEMO = Path.of("demo-jobs", "kiln-room.json").toString();

    @TempDir
    private Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void everyFileOfACutTellsItsJob() throws IOException {
        Path to = folder.resolve("cut");
        assertThat(run("cut", DEMO, "--to", to.toString())).isEqualTo(0);
        List<Path> files;
        try (Stream<Path> all = Files.walk(to)) {
            files = all.filter(file -> file.toString().matches(".*\\.(pdf|svg|dxf)")).toList();
        }
        assertThat(files).hasSizeGreaterThan(18);
        for (Path file : files) {
            out.getBuffer().setLength(0);
            assertThat(run("stamp", file.toString(), to.resolve("job.json").toString(),
                    Path.of("demo-jobs", "woodwork-class.json").toString()))
                    .as("%s %s", file, err).isEqualTo(0);
            List<String> lines = out.toString().lines().toList();
            assertThat(lines.get(0)).matches("Kiln room, pottery school, stamp [0-9a-f]{8}");
            assertThat(lines.get(1)).endsWith(": this one");
            assertThat(lines.get(2)).endsWith(": another, or changed since");
        }
    }

    @Test
    void filesWithoutAStampAreTold() throws IOException {
        Path file = Files.writeString(folder.resolve("x.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
        assertThat(run("stamp", file.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("has no stamp");
        assertThat(run("stamp", folder.resolve("none.pdf").toString())).isEqualTo(3);
    }

    @Test
    void aPrinterIsKeptByPaperAndUsed() {
        String printers = folder.resolve("sub/printers.json").toString();
        assertThat(run("printer", "set", "office", "--paper", "a4", "--units", "mm", "--across", "159.5 mm", "--printers",
                printers)).as(err.toString()).isEqualTo(0);
        assertThat(out.toString().strip()).startsWith("office, A4: across +").endsWith("along +0.000 %");
        assertThat(run("cut", DEMO, "--to", folder.resolve("a").toString(), "--paper", "a4", "--printer", "office", "--printers",
                printers)).isEqualTo(0);
        assertThat(run("cut", DEMO, "--to", folder.resolve("b").toString(), "--printer", "office", "--printers", printers))
                .isEqualTo(2);
        assertThat(err.toString()).contains("The printer office was not measured on LETTER.");
        assertThat(folder.resolve("b")).doesNotExist();
        out.getBuffer().setLength(0);
        assertThat(run("printer", "list", "--printers", printers)).isEqualTo(0);
        assertThat(out.toString().lines()).hasSize(1);
    }

    @Test
    void thePageIsWrittenOrTheReasonTold() {
        Path page = folder.resolve("check.pdf");
        assertThat(run("printer", "page", page.toString(), "--paper", "a4", "--units", "mm")).isEqualTo(0);
        assertThat(page).isNotEmptyFile();
        assertThat(run("printer", "page", folder.resolve("none/check.pdf").toString())).isEqualTo(3);
        assertThat(run("printer", "page", page.toString(), "--paper", "one")).isEqualTo(2);
        assertThat(err.toString()).contains("could not be written").contains("--paper ONE has no printer check");
    }

    @Test
    void fitToPageIsRefused() {
        String printers = folder.resolve("printers.json").toString();
        assertThat(run("printer", "set", "office", "--units", "mm", "--along", "221 mm", "--printers", printers)).isEqualTo(2);
        assertThat(err.toString()).contains("\"fit to page\" is on");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void brokenPrinterFilesAreTold() throws IOException {
        Path printers = Files.writeString(folder.resolve("printers.json"),
                "{\"printers\": [{\"printer\": \"x\", \"paper\": \"A4\", \"across\": 2, \"along\": 1}]}");
        assertThat(run("printer", "list", "--printers", printers.toString())).isEqualTo(3);
        assertThat(err.toString()).contains("can't be understood as a list of printers");
    }

    private int run(String... words) {
        return Main.run(words, new PrintWriter(out, true), new PrintWriter(err, true));
    }
}
