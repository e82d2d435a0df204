package org.capwright.export.pdf;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Stroke;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/**
 * How a drawing is divided into tiles that overlap. Rows are lettered from the top, columns numbered from the left.
 *
 * @param rows number of rows
 * @param columns number of columns
 * @param widthMm width of a tile
 * @param heightMm height of a tile
 * @param origin lower left corner of the whole, in the drawing
 * @param tiles the tiles that have lines on them, row by row from the top
 */
record Tiling(int rows, int columns, double widthMm, double heightMm, Vec2 origin, List<Tile> tiles) {
    /** How far neighbours overlap. */
    static final double OVERLAP_MM = 10;
    private static final double FLATNESS_MM = 0.05;
    private static final double CROSS_SHARE = 0.2;

    /** A tile: its place in the grid and its part of the drawing. */
    record Tile(int row, int column, Bounds window) {
        String name() {
            return (char) ('A' + row) + Integer.toString(column + 1);
        }
    }

    /** A cross that two neighbouring tiles share. */
    record Cross(int number, Vec2 at) {
    }

    /** Divides a drawing into as few tiles of a size as do, in the middle of their grid; tiles without lines are left out. */
    static Tiling of(Drawing drawing, double tileWidthMm, double tileHeightMm) {
        Bounds bounds = drawing.bounds().grown(1);
        int columns = count(bounds.width(), tileWidthMm);
        int rows = count(bounds.height(), tileHeightMm);
        Vec2 whole = new Vec2(extent(columns, tileWidthMm), extent(rows, tileHeightMm));
        Vec2 origin = bounds.center().minus(whole.times(0.5));
        Tiling grid = new Tiling(rows, columns, tileWidthMm, tileHeightMm, origin, List.of());
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Tile tile = grid.at(row, column);
                if (drawn(drawing, grid.core(tile))) {
                    tiles.add(tile);
                }
            }
        }
        return new Tiling(rows, columns, tileWidthMm, tileHeightMm, origin, List.copyOf(tiles));
    }

    private static int count(double sizeMm, double tileMm) {
        return Math.max(1, (int) Math.ceil((sizeMm - OVERLAP_MM) / (tileMm - OVERLAP_MM)));
    }

    private static double extent(int count, double tileMm) {
        return count * (tileMm - OVERLAP_MM) + OVERLAP_MM;
    }

    /** A tile of the grid, printed or not. */
    Tile at(int row, int column) {
        return new Tile(row, column, window(row, column));
    }

    private Bounds window(int row, int column) {
        double x = origin.x() + column * (widthMm - OVERLAP_MM);
        double y = origin.y() + (rows - 1 - row) * (heightMm - OVERLAP_MM);
        return new Bounds(x, y, x + widthMm, y + heightMm);
    }

    /**
     * What of the drawing is left to a tile: its window up to the middle of its overlaps, all of it where it has no
     * neighbour.
     */
    Bounds core(Tile tile) {
        double half = OVERLAP_MM / 2;
        Bounds w = tile.window();
        return new Bounds(w.minX() + (tile.column() > 0 ? half : 0), w.minY() + (tile.row() < rows - 1 ? half : 0),
                w.maxX() - (tile.column() < columns - 1 ? half : 0), w.maxY() - (tile.row() > 0 ? half : 0));
    }

    private static boolean drawn(Drawing drawing, Bounds core) {
        Rectangle2D box = new Rectangle2D.Double(core.minX(), core.minY(), core.width(), core.height());
        return drawing.strokes().stream().anyMatch(stroke -> crosses(stroke, box));
    }

    private static boolean crosses(Stroke stroke, Rectangle2D box) {
        List<Vec2> points = stroke.path().points(FLATNESS_MM);
        for (int i = 1; i < points.size(); i++) {
            if (box.intersectsLine(points.get(i - 1).x(), points.get(i - 1).y(), points.get(i).x(), points.get(i).y())) {
                return true;
            }
        }
        return false;
    }

    /** The printed tile on which writing at a point belongs: where it is well inside, else the nearest. */
    Tile owner(Vec2 at) {
        return tiles.stream().min(Comparator.comparingDouble((Tile tile) -> core(tile).contains(at) ? 0 : 1)
                .thenComparingDouble(tile -> tile.window().center().distance(at))).orElseThrow();
    }

    /** The crosses in the overlaps of tiles that are both printed. */
    List<Cross> crosses() {
        List<Cross> crosses = new ArrayList<>();
        for (Tile tile : tiles) {
            Bounds w = tile.window();
            if (printed(tile.row(), tile.column() + 1)) {
                double x = w.maxX() - OVERLAP_MM / 2;
                add(crosses, new Vec2(x, w.minY() + CROSS_SHARE * heightMm), new Vec2(x, w.maxY() - CROSS_SHARE * heightMm));
            }
            if (printed(tile.row() + 1, tile.column())) {
                double y = w.minY() + OVERLAP_MM / 2;
                add(crosses, new Vec2(w.minX() + CROSS_SHARE * widthMm, y), new Vec2(w.maxX() - CROSS_SHARE * widthMm, y));
            }
        }
        return crosses;
    }

    private static void add(List<Cross> crosses, Vec2 a, Vec2 b) {
        crosses.add(new Cross(crosses.size() + 1, a));
        crosses.add(new Cross(crosses.size() + 1, b));
    }

    boolean printed(int row, int column) {
        return tiles.stream().anyMatch(tile -> tile.row() == row && tile.column() == column);
    }
}
