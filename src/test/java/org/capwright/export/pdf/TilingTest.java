package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.RandomCaps;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Stroke;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.junit.jupiter.api.Test;

/** Tiles together hold every line, and can be laid to each other by their crosses. */
class TilingTest {
    private static final long SEED = 77;
    private static final double STEP_MM = 2;
    private static final double EDGE_MM = 0.5;

    @Test
    void rectanglesOfAnySize() {
        Random random = new Random(SEED);
        for (int i = 0; i < 400; i++) {
            double width = 20 + random.nextDouble() * 1500;
            double height = 20 + random.nextDouble() * 900;
            Drawing drawing = new Drawing.Builder("rectangle").cut(Path.polyline(List.of(Vec2.ZERO, new Vec2(width, 0),
                    new Vec2(width, height), new Vec2(0, height)), true)).build();
            check(drawing, Tiling.of(drawing, 186.9, 235.4), "seed " + SEED + ", " + width + " x " + height);
        }
    }

    /** Sizes at which the grid just fits: nothing to spare at the outer edges. */
    @Test
    void rectanglesThatJustFit() {
        for (int columns = 1; columns < 5; columns++) {
            for (double spare : new double[] {0, 0.1, 1, 5}) {
                double width = columns * (186.9 - Tiling.OVERLAP_MM) + Tiling.OVERLAP_MM - 2 - spare;
                Drawing drawing = new Drawing.Builder("rectangle").cut(Path.polyline(List.of(Vec2.ZERO, new Vec2(width, 0),
                        new Vec2(width, width), new Vec2(0, width)), true)).build();
                check(drawing, Tiling.of(drawing, 186.9, 186.9), columns + " columns, " + spare + " to spare");
            }
        }
    }

    @Test
    void blanksOfRandomCaps() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(4_000, 25)) {
            for (Blank blank : Blanks.of(drawn.cap())) {
                for (Paper paper : List.of(Paper.LETTER, Paper.A4, Paper.TABLOID)) {
                    check(blank.drawing(), TilePages.tiling(blank, paper), paper + " " + blank.id() + " " + drawn);
                }
                check(blank.drawing(), TilePages.onePage(blank), "one page, " + blank.id() + " " + drawn);
            }
        }
    }

    private static void check(Drawing drawing, Tiling tiling, String which) {
        for (Stroke stroke : drawing.strokes()) {
            for (Vec2 p : points(stroke.path())) {
                assertThat(tiling.tiles()).as("%s is on a tile: %s", p, which)
                        .anyMatch(tile -> tile.window().grown(-EDGE_MM).contains(p));
            }
        }
        crosses(tiling, which);
    }

    private static List<Vec2> points(Path path) {
        List<Vec2> points = new ArrayList<>();
        path.segments().forEach(segment -> {
            int steps = Math.max(1, (int) Math.ceil(segment.length() / STEP_MM));
            for (int i = 0; i <= steps; i++) {
                points.add(segment.pointAt((double) i / steps));
            }
        });
        return points;
    }

    /** Each cross is on two tiles, well inside; all tiles hang together by them. */
    private static void crosses(Tiling tiling, String which) {
        List<Tiling.Tile> tiles = tiling.tiles();
        Deque<Tiling.Tile> next = new ArrayDeque<>(List.of(tiles.get(0)));
        List<Tiling.Tile> reached = new ArrayList<>(next);
        for (Tiling.Cross cross : tiling.crosses()) {
            assertThat(tiles.stream().filter(tile -> tile.window().grown(-4).contains(cross.at()))).as(which).hasSize(2);
        }
        while (!next.isEmpty()) {
            Bounds window = next.pop().window();
            for (Tiling.Tile tile : tiles) {
                if (!reached.contains(tile) && tiling.crosses().stream().filter(c -> window.contains(c.at())
                        && tile.window().contains(c.at())).count() >= 2) {
                    reached.add(tile);
                    next.add(tile);
                }
            }
        }
        assertThat(reached).as("tiles that hang together: " + which).hasSameSizeAs(tiles);
    }
}
