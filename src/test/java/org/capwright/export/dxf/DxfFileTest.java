package org.capwright.export.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Layer;
import org.capwright.export.Demos;
import org.capwright.export.JobTag;
import org.capwright.export.OutsideProgram;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** DXF files read by programs of other people and compared with the core. */
class DxfFileTest {
    private static final Path SCRIPTS = Path.of("src", "test", "resources", "org", "capwright", "export", "dxf");
    private static final Map<String, String> LOCK_AND_OPEN_FLANGES = Map.of("leaves.flangeAngle", "60 deg", "sleeve.seam.kind",
            "lock",
            "sleeve.seam.width", "1/4 in", "gutter.insideWidth", "auto", "gutter.depth", "auto", "hood.aboveRim", "auto",
            "hood.beads[1].fromTop", "3 in");

    @TempDir
    private Path folder;

    private record Written(Blank blank, Path file) {
    }

    @ParameterizedTest
    @EnumSource(DxfUnit.class)
    void readByEzdxf(DxfUnit unit) throws Exception {
        Optional<String> python = Stream.of("python3", "/usr/bin/python3")
                .filter(command -> OutsideProgram.works(command, "-c", "import ezdxf")).findFirst();
        assumeTrue(python.isPresent(),
                "python3 with ezdxf (Debian: python3-ezdxf) is not there: the independent reader is left out");
        List<Written> files = write(unit);
        List<String> found = OutsideProgram.lines(List.of(python.get(), SCRIPTS.resolve("measure.py").toString()), paths(files));
        assertThat(found).hasSameSizeAs(files);
        double mm = unit == DxfUnit.MM ? 1 : 25.4;
        for (int i = 0; i < files.size(); i++) {
            Blank blank = files.get(i).blank();
            String[] fields = found.get(i).split(" ");
            assertThat(fields[1]).as("audit: " + found.get(i)).isEqualTo("0");
            assertThat(fields[2]).as("unit").isEqualTo(unit == DxfUnit.MM ? "4" : "1");
            assertThat(Integer.parseInt(fields[3])).as("outline and holes: " + found.get(i)).isEqualTo(1 + blank.holes().size());
            assertThat(Double.parseDouble(fields[4]) * mm).as("gap: " + found.get(i)).isLessThan(0.001);
            assertThat(Double.parseDouble(fields[5]) * mm * mm).as("area: " + found.get(i))
                    .isCloseTo(blank.areaMm2(), within(0.01));
            assertThat(Double.parseDouble(fields[6]) * mm).as("length: " + found.get(i))
                    .isCloseTo(length(blank, Layer.CUT), within(0.001));
            assertThat(fields[7]).as("holes outside: " + found.get(i)).isEqualTo("0");
            assertThat(fields[8]).as("duplicates: " + found.get(i)).isEqualTo("0");
            assertThat(Double.parseDouble(fields[9]) * mm).as("bends: " + found.get(i))
                    .isCloseTo(length(blank, Layer.BEND), within(0.001));
        }
    }

    @Test
    void readByDxfParser() throws Exception {
        assumeTrue(OutsideProgram.works("node", "-e", "require('dxf-parser')"),
                "node with dxf-parser is not there: the second independent reader is left out");
        List<Written> files = write(DxfUnit.MM);
        List<String> found = OutsideProgram.lines(List.of("node", SCRIPTS.resolve("measure.js").toString()), paths(files));
        for (int i = 0; i < files.size(); i++) {
            Blank blank = files.get(i).blank();
            String[] fields = found.get(i).split(" ");
            long circles = blank.drawing().paths(Layer.CUT).stream().filter(path -> path.segments().size() == 1).count();
            assertThat(fields[1]).isEqualTo("4");
            assertThat(Integer.parseInt(fields[2])).as(found.get(i)).isEqualTo(circles);
            assertThat(Double.parseDouble(fields[3])).as(found.get(i)).isCloseTo(length(blank, Layer.CUT), within(0.001));
        }
    }

    @Test
    void namesAreEscapedAndTheStampIsThere() throws IOException {
        Drawing drawing = new Drawing.Builder("plate").cut(org.capwright.geom.Path.circle(Vec2.ZERO, 10)).build();
        Path file = folder.resolve("plate.dxf");
        DxfFile.write(file, drawing, List.of("title"), new JobTag("M\u00fcller\nnorth", "B", "0123abcd", List.of("too tight")),
                DxfUnit.MM);
        String text = Files.readString(file, StandardCharsets.US_ASCII);
        assertThat(text).contains("M\\U+00FCller north, revision B, stamp 0123abcd").contains("FOUL: too tight")
                .endsWith("EOF\n");
    }

    @Test
    void linesOnEachOtherAreJoined() {
        Drawing drawing = new Drawing.Builder("lines").cut(org.capwright.geom.Path.circle(Vec2.ZERO, 50))
                .mark(line(0, 0, 0, 10)).mark(line(0, 15, 0, 5)).mark(line(0, 20, 0, 30)).mark(line(5, 5, -5, 5)).build();
        assertThat(LinesOnce.of(drawing, Layer.MARK).stream().map(org.capwright.geom.Path::length).sorted().toList())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
                        .containsExactly(10.0, 10.0, 15.0);
    }

    private static org.capwright.geom.Path line(double x1, double y1, double x2, double y2) {
        return org.capwright.geom.Path.line(new Vec2(x1, y1), new Vec2(x2, y2));
    }

    private List<Written> write(DxfUnit unit) throws IOException {
        List<Written> files = new ArrayList<>();
        for (Cap cap : caps().toList()) {
            for (Blank blank : Blanks.of(cap)) {
                Path file = folder.resolve(files.size() + "-" + blank.id() + ".dxf");
                DxfFile.write(file, blank, JobTag.of(cap.job(), "0123abcd", List.of()), Writing.of(cap).format(), unit);
                files.add(new Written(blank, file));
            }
        }
        return files;
    }

    private static Stream<Cap> caps() {
        return Stream.concat(Demos.ALL.stream().map(Demos::cap), Stream.of(Cap.solve(Jobs.kilnWith(LOCK_AND_OPEN_FLANGES))));
    }

    private static List<Path> paths(List<Written> files) {
        return files.stream().map(Written::file).toList();
    }

    private static double length(Blank blank, Layer layer) {
        return blank.drawing().paths(layer).stream().mapToDouble(org.capwright.geom.Path::length).sum();
    }
}
