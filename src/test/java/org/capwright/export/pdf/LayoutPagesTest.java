package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.blank.Writing;
import org.capwright.export.Demos;
import org.capwright.export.JobTag;
import org.capwright.geom.Vec2;
import org.capwright.layout.Layout;
import org.capwright.layout.View;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Views as they are on paper: at the scale that the page names, their leaders apart from the drawing. */
class LayoutPagesTest {
    private static final Pattern SCALE = Pattern.compile(".*, scale (\\d+):(\\d+) \\(reference only\\)");
    private static final double SAMPLE_MM = 0.25;
    private static final double NEAR_MM = 0.5;
    private static final double MOST_NEAR_MM = 5;

    @TempDir
    private Path folder;

    static Stream<Arguments> demosAndPapers() {
        return Demos.ALL.stream().flatMap(demo -> Stream.of(Paper.LETTER, Paper.A4, Paper.A3)
                .map(paper -> Arguments.of(demo, paper)));
    }

    private PDDocument written(Cap cap, Paper paper) throws IOException {
        Path file = folder.resolve("layout.pdf");
        LayoutBook.write(file, Layout.of(cap), PrintSetup.of(paper), JobTag.of(cap.job(), "0123abcd", List.of()),
                Writing.of(cap).format());
        return Loader.loadPDF(file.toFile());
    }

    @ParameterizedTest
    @MethodSource("demosAndPapers")
    void viewsAreAtTheScaleThatTheTitleNames(String demo, Paper paper) throws IOException {
        Cap cap = Demos.cap(demo);
        List<View> views = Layout.of(cap).views();
        try (PDDocument document = written(cap, paper)) {
            for (int i = 0; i < views.size(); i++) {
                Matcher title = SCALE.matcher(Texts.of(document, i + 1).get(0).words());
                assertThat(title.matches()).as(views.get(i).title()).isTrue();
                double scale = Double.parseDouble(title.group(1)) / Double.parseDouble(title.group(2));
                // outlines are the only wide lines
                List<PageStrokes.Line> wide = PageStrokes.lines(document.getPage(i)).stream()
                        .filter(line -> Math.abs(line.penMm() - DrawingStyle.WIDE_MM) < 0.01).toList();
                double drawn = views.get(i).lines().stream().filter(line -> line.kind() == org.capwright.layout.LineKind.OUTLINE)
                        .map(line -> line.path().bounds()).reduce(org.capwright.geom.Bounds::union).orElseThrow().width();
                double least = wide.stream().mapToDouble(line -> Math.min(line.from().x(), line.to().x())).min().orElseThrow();
                double most = wide.stream().mapToDouble(line -> Math.max(line.from().x(), line.to().x())).max().orElseThrow();
                assertThat(most - least).as("%s, %s, %s", demo, paper, title.group()).isCloseTo(drawn * scale, within(0.05));
            }
        }
    }

    /** ISO 5455 (from memory): enlargements 50, 20, 10, 5, 2 to 1; reductions 1 to 2, 5, 10, 20, 50, 100. */
    @Test
    void standardScales() {
        assertThat(DrawingScale.standard(UnitSystem.METRIC)).extracting(DrawingScale::factor)
                .containsExactly(50.0, 20.0, 10.0, 5.0, 2.0, 1.0, 1 / 2.0, 1 / 5.0, 1 / 10.0, 1 / 20.0, 1 / 50.0, 1 / 100.0);
        assertThat(DrawingScale.standard(UnitSystem.INCH)).extracting(DrawingScale::words)
                .contains("scale 1:4 (reference only)", "scale 1:8 (reference only)", "scale 1:16 (reference only)");
    }

    /** The next larger standard scale would not fit: the hood's height and its dimensions alone take more than there is. */
    @Test
    void noScaleIsSmallerThanItMustBe() throws IOException {
        try (PDDocument small = written(Cap.solve(Jobs.kiln()), Paper.LETTER)) {
            assertThat(Texts.of(small, 3).get(0).words()).isEqualTo("Layout: elevation, seen along the rods, scale 1:4 (reference only)");
        }
        try (PDDocument large = written(Cap.solve(Jobs.kiln()), Paper.A3)) {
            assertThat(Texts.of(large, 3).get(0).words()).isEqualTo("Layout: elevation, seen along the rods, scale 1:4 (reference only)");
        }
    }

    @ParameterizedTest
    @MethodSource("demosAndPapers")
    void leadersNeitherCrossNorRunAlongLines(String demo, Paper paper) throws IOException {
        List<String> found = new ArrayList<>();
        int leaders = 0;
        try (PDDocument document = written(Demos.cap(demo), paper)) {
            for (int page = 0; page < 5; page++) {
                List<PageStrokes.Line> lines = PageStrokes.lines(document.getPage(page));
                List<Texts.Text> texts = Texts.of(document, page + 1);
                List<PageStrokes.Line> own = lines.stream().filter(line -> leader(line, texts)).toList();
                leaders += own.size();
                for (int i = 0; i < own.size(); i++) {
                    PageStrokes.Line leader = own.get(i);
                    String where = "page " + (page + 1) + ", leader from " + leader.from();
                    lines.stream().filter(line -> !own.contains(line) && !line.curve() && near(leader, line) > MOST_NEAR_MM)
                            .forEach(line -> found.add(where + " along " + line));
                    own.subList(0, i).stream().filter(other -> crosses(leader, other))
                            .forEach(other -> found.add(where + " across the one from " + other.from()));
                }
            }
        }
        assertThat(leaders).isGreaterThan(30);
        assertThat(found).isEmpty();
    }

    /** A pale line that ends beside writing. */
    private static boolean leader(PageStrokes.Line line, List<Texts.Text> texts) {
        return Math.abs(line.grey() - DrawingStyle.PALE) < 0.01 && texts.stream().anyMatch(text ->
                Math.abs(text.at().y() + text.height() / 2 - line.to().y()) < 4.1
                        && (Math.abs(text.at().x() - 1 - line.to().x()) < 0.02
                                || Math.abs(text.at().x() + text.length() + 1 - line.to().x()) < 0.02));
    }

    /** How much of a leader is near a line. */
    private static double near(PageStrokes.Line leader, PageStrokes.Line line) {
        Vec2 run = leader.to().minus(leader.from());
        int steps = (int) Math.ceil(run.norm() / SAMPLE_MM);
        long near = 0;
        for (int i = 0; i <= steps; i++) {
            Vec2 p = leader.from().plus(run.times((double) i / steps));
            near += Line2D.ptSegDist(line.from().x(), line.from().y(), line.to().x(), line.to().y(), p.x(), p.y()) < NEAR_MM
                    ? 1 : 0;
        }
        return near * run.norm() / steps;
    }

    private static boolean crosses(PageStrokes.Line a, PageStrokes.Line b) {
        return Line2D.linesIntersect(a.from().x(), a.from().y(), a.to().x(), a.to().y(), b.from().x(), b.from().y(), b.to().x(),
                b.to().y());
    }
}
