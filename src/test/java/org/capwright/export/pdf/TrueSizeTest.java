package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.capwright.geom.Vec2;
import org.capwright.part.Leaf;
import org.capwright.part.Standoff;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Radii and distances measured on the pages of the kiln job's templates. */
class TrueSizeTest {
    private static final double MEASURED_MM = 0.05;
    private static final double CURVE_MM = 0.01;

    @TempDir
    private Path folder;

    /** Each tile's curves are put on one circle by three of their points; every other point must lie on it. */
    @ParameterizedTest
    @EnumSource(value = Paper.class, names = {"LETTER", "A4", "ONE"})
    void leafRadii(Paper paper) throws IOException {
        Book book = Book.kiln(folder, paper, false, Map.of());
        Leaf leaf = book.cap().leaves().get(0);
        List<Book.Sheet> tiles = book.titled("Leaf 1").stream().filter(s -> s.title().contains("true size")).toList();
        assertThat(tiles).isNotEmpty();
        for (double radius : new double[] {leaf.shrink().blankRadiusMm(), leaf.curveBendRadiusMm()}) {
            int found = 0;
            for (Book.Sheet tile : tiles) {
                for (List<PageStrokes.Piece> arc : arcs(tile.pieces())) {
                    Circle circle = Circle.through(arc.get(0).from(), arc.get(arc.size() / 2).at(0.5), arc.get(arc.size() - 1).to());
                    if (Math.abs(circle.radius() - radius) < 0.5) {
                        found++;
                        assertThat(circle.radius()).as(paper + " " + tile.title()).isCloseTo(radius, within(MEASURED_MM));
                        onCircle(arc, circle);
                    }
                }
            }
            assertThat(found).as("arcs of radius " + radius).isEqualTo(tiles.size());
        }
    }

    private static void onCircle(List<PageStrokes.Piece> arc, Circle circle) {
        for (PageStrokes.Piece piece : arc) {
            for (int i = 0; i <= 20; i++) {
                assertThat(piece.at(i / 20.0).distance(circle.center())).isCloseTo(circle.radius(), within(CURVE_MM));
            }
        }
    }

    /** Runs of curves of one path. */
    private static List<List<PageStrokes.Piece>> arcs(List<PageStrokes.Piece> pieces) {
        List<List<PageStrokes.Piece>> arcs = new ArrayList<>();
        List<PageStrokes.Piece> run = new ArrayList<>();
        for (PageStrokes.Piece piece : pieces) {
            boolean follows = !run.isEmpty() && !piece.line() && run.get(0).path() == piece.path()
                    && run.get(run.size() - 1).to().distance(piece.from()) < 1e-3;
            if (!follows && !run.isEmpty()) {
                arcs.add(List.copyOf(run));
                run.clear();
            }
            if (!piece.line()) {
                run.add(piece);
            }
        }
        if (!run.isEmpty()) {
            arcs.add(run);
        }
        return arcs.stream().filter(arc -> arc.size() > 2 || arc.get(0).from().distance(arc.get(0).to()) > 1).toList();
    }

    /** Circle through three points. */
    record Circle(Vec2 center, double radius) {
        static Circle through(Vec2 a, Vec2 b, Vec2 c) {
            Vec2 p = b.minus(a);
            Vec2 q = c.minus(a);
            double d = 2 * p.cross(q);
            Vec2 m = new Vec2(q.y() * p.dot(p) - p.y() * q.dot(q), p.x() * q.dot(q) - q.x() * p.dot(p)).times(1 / d);
            return new Circle(a.plus(m), m.norm());
        }
    }

    @ParameterizedTest
    @EnumSource(value = Paper.class, names = {"LETTER", "A4", "ONE"})
    void holeSpacings(Paper paper) throws IOException {
        Book book = Book.kiln(folder, paper, false, Map.of());
        Standoff standoff = book.cap().standoff();
        double rivets = standoff.rivetHeightMm(1) - standoff.rivetHeightMm(0);
        assertThat(spacings(book, standoff.rivets().holeMm() / 2)).as("rivet holes of standoff and hood")
                .anyMatch(spacing -> Math.abs(spacing - rivets) < MEASURED_MM);
        double bores = 2 * book.cap().leaves().get(0).rodAxisMm();
        assertThat(spacings(book, book.cap().bushing().outsideMm() / 2)).as("bores of the doubler")
                .anyMatch(spacing -> Math.abs(spacing - bores) < MEASURED_MM);
    }

    /** Distances between the middles of neighbouring circles of a radius, page by page. */
    private static List<Double> spacings(Book book, double radius) {
        List<Double> spacings = new ArrayList<>();
        for (Book.Sheet sheet : book.sheets()) {
            List<Vec2> middles = new ArrayList<>();
            for (List<PageStrokes.Piece> arc : arcs(sheet.pieces())) {
                Circle circle = Circle.through(arc.get(0).from(), arc.get(arc.size() / 3).to(), arc.get(2 * arc.size() / 3).to());
                if (arc.get(arc.size() - 1).to().distance(arc.get(0).from()) < 1e-3 && Math.abs(circle.radius() - radius) < 0.02) {
                    middles.forEach(other -> spacings.add(other.distance(circle.center())));
                    middles.add(circle.center());
                }
            }
        }
        return spacings;
    }

    /** Stations of the bushing holes' edges on the hood's detail, from its doubler's centre line, against the handbook's figures. */
    @Test
    void bushingHolesOfTheHood() throws IOException {
        Book book = Book.kiln(folder, Paper.LETTER, false, Map.of());
        List<double[]> spans = new ArrayList<>();
        for (Book.Sheet sheet : book.sheets()) {
            sheet.pieces().stream().filter(PageStrokes.Piece::line).map(PageStrokes.Piece::path).distinct().forEach(path -> {
                List<PageStrokes.Piece> one = sheet.pieces().stream().filter(p -> p.path() == path).toList();
                if (one.size() > 100) {
                    spans.add(new double[] {one.stream().mapToDouble(p -> p.from().x()).min().orElseThrow(),
                            one.stream().mapToDouble(p -> p.from().x()).max().orElseThrow(),
                            one.stream().mapToDouble(p -> p.from().y()).max().orElseThrow()
                                    - one.stream().mapToDouble(p -> p.from().y()).min().orElseThrow()});
                }
            });
        }
        // handbook: 0.1872 to 0.8145 in from the y axis, the pair 0.3744 in apart
        assertThat(spans).filteredOn(s -> Math.abs(s[1] - s[0] - 0.6272 * 25.4) < MEASURED_MM && Math.abs(s[2] - 0.625 * 25.4) < MEASURED_MM)
                .hasSizeGreaterThanOrEqualTo(2);
        assertThat(spans.stream().flatMap(a -> spans.stream().map(b -> b[0] - a[1])).toList())
                .anyMatch(gap -> Math.abs(gap - 2 * 0.1872 * 25.4) < MEASURED_MM);
    }
}
