package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.capwright.geom.Vec2;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page turned into SVG by poppler's pdftocairo and measured there. */
class OtherReaderTest {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    @TempDir
    private Path folder;

    @Test
    void leafRadius() throws Exception {
        boolean there = Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(entry -> Files.isExecutable(Path.of(entry, "pdftocairo")));
        assumeTrue(there, "pdftocairo (poppler-utils) is not on the path: the second reader is left out");
        Book book = Book.kiln(folder, Paper.ONE, false, Map.of());
        Leaf leaf = book.cap().leaves().get(0);
        Book.Sheet sheet = book.titled("Leaf 1, true size").get(0);
        String page = Integer.toString(sheet.number());
        Path svg = folder.resolve("page.svg");
        Process process = new ProcessBuilder("pdftocairo", "-svg", "-f", page, "-l", page, folder.resolve("templates-ONE.pdf").toString(),
                svg.toString()).inheritIO().start();
        assertThat(process.waitFor()).isZero();
        List<Double> radii = radii(Files.readString(svg));
        assertThat(radii).anySatisfy(r -> assertThat(r).isCloseTo(leaf.shrink().blankRadiusMm(), within(0.05)));
        assertThat(radii).anySatisfy(r -> assertThat(r).isCloseTo(leaf.curveBendRadiusMm(), within(0.05)));
    }

    /** Radii of runs of at least four curves, from the first, a middle and the last point of each. */
    private static List<Double> radii(String svg) {
        List<Double> radii = new ArrayList<>();
        Matcher paths = Pattern.compile("<path [^>]*?\\bd=\"([^\"]*)\"[^>]*>").matcher(svg);
        while (paths.find()) {
            double scale = scale(paths.group());
            for (String run : paths.group(1).split("(?=[ML])")) {
                List<Vec2> ends = new ArrayList<>();
                for (String curve : run.split("C")) {
                    List<Double> numbers = NUMBER.matcher(curve).results().map(r -> Double.parseDouble(r.group())).toList();
                    if (numbers.size() >= 2) {
                        ends.add(new Vec2(numbers.get(numbers.size() - 2), numbers.get(numbers.size() - 1)).times(scale * MM_PER_POINT));
                    }
                }
                if (ends.size() > 4) {
                    radii.add(TrueSizeTest.Circle.through(ends.get(0), ends.get(ends.size() / 2), ends.get(ends.size() - 1)).radius());
                }
            }
        }
        return radii;
    }

    /** The scale of the path's own transform, where it has one. */
    private static double scale(String element) {
        Matcher matrix = Pattern.compile("transform=\"matrix\\(\\s*(-?[\\d.]+)").matcher(element);
        return matrix.find() ? Math.abs(Double.parseDouble(matrix.group(1))) : 1;
    }
}
