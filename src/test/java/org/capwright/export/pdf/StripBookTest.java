package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.blank.StationStrip;
import org.capwright.blank.StationStrips;
import org.capwright.blank.Writing;
import org.capwright.export.Demos;
import org.capwright.export.JobTag;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Station strips, in the core and on paper. */
class StripBookTest {
    private final Cap cap = Cap.solve(Jobs.kiln());
    private final List<StationStrip> strips = StationStrips.of(cap);

    @TempDir
    private Path folder;

    /**
     * A butt-welded sleeve's strips are as long as the circles they lie on; worked girth 57.1035 in (trade handbook,
     * section 5).
     */
    @Test
    void lengthsAreGirths() {
        assertThat(strip("sleeve", StationStrip.Face.FLAT).lengthMm() / 25.4).isCloseTo(57.1035, within(0.0001));
        assertThat(strip("sleeve", StationStrip.Face.OUTSIDE).lengthMm())
                .isCloseTo(2 * Math.PI * cap.sleeve().outsideRadiusMm(), within(1e-9));
        assertThat(strip("sleeve", StationStrip.Face.INSIDE).lengthMm())
                .isCloseTo(2 * Math.PI * cap.sleeve().insideRadiusMm(), within(1e-9));
    }

    /** Standoffs stand a sixth of the circle apart, on whichever face; inside, the order is turned round. */
    @Test
    void standoffsAreEvenlySpaced() {
        for (StationStrip.Face face : List.of(StationStrip.Face.OUTSIDE, StationStrip.Face.INSIDE)) {
            double radius = face == StationStrip.Face.OUTSIDE ? cap.hood().outsideRadiusMm() : cap.hood().insideRadiusMm();
            List<StationStrip.Mark> rivets = strip("hood", face).marks().stream()
                    .filter(mark -> mark.what().startsWith("standoff")).toList();
            assertThat(rivets).hasSize(6);
            for (int i = 1; i < 6; i++) {
                assertThat(rivets.get(i).atMm() - rivets.get(i - 1).atMm()).isCloseTo(radius * Math.PI / 3, within(1e-6));
            }
        }
        List<String> outside = strip("sleeve", StationStrip.Face.OUTSIDE).marks().stream().map(StationStrip.Mark::what)
                .filter(what -> what.startsWith("quarter")).toList();
        List<String> inside = new ArrayList<>(strip("sleeve", StationStrip.Face.INSIDE).marks().stream()
                .map(StationStrip.Mark::what).filter(what -> what.startsWith("quarter")).toList());
        java.util.Collections.reverse(inside);
        assertThat(inside).isEqualTo(outside).hasSize(4);
    }

    /** Standing lines read back from the file, laid together by the tiles' overlap, are where the core says. */
    @Test
    void linesOnPaperAreAtTheirStations() throws IOException {
        for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
            StationStrip strip = strip("hood", StationStrip.Face.OUTSIDE);
            Path file = folder.resolve("strip.pdf");
            StripBook.write(file, List.of(strip), PrintSetup.of(paper), JobTag.of(cap.job(), "0123abcd", List.of()),
                    Writing.of(cap).format());
            List<Double> found = stations(file);
            for (StationStrip.Mark mark : strip.marks()) {
                assertThat(found).as(mark + " on " + paper).anyMatch(at -> Math.abs(at - mark.atMm()) < 0.02);
            }
            for (double at : found) {
                assertThat(strip.marks()).as(at + " on " + paper).anyMatch(mark -> Math.abs(at - mark.atMm()) < 0.02);
            }
        }
    }

    /** By crosses of the same number, tiles lie where the strip's length says; no cross lies on a station's line. */
    @Test
    void tilesLieByTheirCrossesOffTheStations() throws IOException {
        for (StationStrip strip : StationStrips.of(Demos.cap("grain-dryer-hall"))) {
            Path file = folder.resolve("strip.pdf");
            StripBook.write(file, List.of(strip), PrintSetup.of(Paper.LETTER), new JobTag("job", "", "0123abcd", List.of()),
                    Writing.of(cap).format());
            int crosses = 0;
            double start = 0;
            double waiting = Double.NaN;
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    List<PageStrokes.Line> lines = PageStrokes.lines(document.getPage(page));
                    for (PageStrokes.Line base : bases(lines)) {
                        List<Double> level = lines.stream().filter(line -> Math.abs(line.dx() - 5) < 0.01 && line.dy() < 0.01
                                && Math.abs(line.from().y() - base.from().y() - StripBook.TICK_MM / 2) < 0.01)
                                .map(line -> (line.from().x() + line.to().x()) / 2 - base.from().x()).sorted().toList();
                        if (!Double.isNaN(waiting)) {
                            assertThat(start + level.get(0)).as(strip.name()).isCloseTo(waiting, within(0.02));
                        }
                        for (double at : level) {
                            double here = start + at;
                            crosses++;
                            assertThat(strip.marks()).as(strip.name() + " " + strip.face())
                                    .allMatch(mark -> Math.abs(mark.atMm() - here) > 1.5);
                        }
                        waiting = level.isEmpty() ? Double.NaN : start + level.get(level.size() - 1);
                        start += base.dx() - Tiling.OVERLAP_MM;
                    }
                }
            }
            assertThat(crosses).isGreaterThan(10);
        }
    }

    /** The lower edges of the tiles of a page, from the top. */
    private static List<PageStrokes.Line> bases(List<PageStrokes.Line> lines) {
        return lines.stream().filter(line -> Math.abs(line.penMm() - DrawingStyle.WIDE_MM) < 0.01 && line.dy() < 0.01)
                .sorted(Comparator.comparingDouble(line -> -line.from().y())).toList();
    }

    private static List<Double> stations(Path file) throws IOException {
        List<Double> stations = new ArrayList<>();
        double start = 0;
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                List<PageStrokes.Line> lines = PageStrokes.lines(document.getPage(page));
                for (PageStrokes.Line base : bases(lines)) {
                    double left = base.from().x();
                    double from = start;
                    lines.stream().filter(line -> Math.abs(line.dy() - StripBook.TICK_MM) < 0.01 && line.dx() < 0.01
                            && Math.abs(line.from().y() - base.from().y()) < 0.01)
                                    .forEach(line -> stations.add(from + line.from().x() - left));
                    start += base.dx() - Tiling.OVERLAP_MM;
                }
            }
        }
        return stations;
    }

    private StationStrip strip(String name, StationStrip.Face face) {
        return strips.stream().filter(strip -> strip.name().equals(name) && strip.face() == face).findFirst().orElseThrow();
    }
}
