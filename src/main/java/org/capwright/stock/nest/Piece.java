package org.capwright.stock.nest;

import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.blank.Grain;
import org.capwright.geom.Path;

/**
 * A shape to be cut.
 *
 * @param job the job it belongs to; empty where that does not matter
 * @param name its name, such as {@code leaf 1}
 * @param outline closed
 * @param holes closed, within the outline
 * @param turns quarter turns in which it may lie, 0 to 3, at least one; the first is tried first
 */
public record Piece(String job, String name, Path outline, List<Path> holes, List<Integer> turns) {
    private static final List<Integer> ANY = List.of(0, 1, 2, 3);

    /** Keeps its own copies. */
    public Piece {
        holes = List.copyOf(holes);
        turns = List.copyOf(turns);
        if (!outline.closed() || turns.isEmpty()) {
            throw new IllegalArgumentException("a piece needs a closed outline and a turn it may lie in: " + name);
        }
    }

    /**
     * A blank as a piece.
     *
     * @param job name of its job
     * @param blank the blank
     * @param keepGrain whether it must lie with the grain as it says; else it may be turned
     * @return the piece
     */
    public static Piece of(String job, Blank blank, boolean keepGrain) {
        return new Piece(job, blank.name(), blank.outline(), blank.holes(), keepGrain ? turns(blank.grain()) : ANY);
    }

    /** The sheet's grain runs along its x. */
    private static List<Integer> turns(Grain grain) {
        return switch (grain) {
            case ALONG_X -> List.of(0, 2);
            case ALONG_Y -> List.of(1, 3);
            case FREE -> ANY;
        };
    }

    /**
     * Area of the sheet that it takes.
     *
     * @return outline less holes, mm2
     */
    public double areaMm2() {
        return Math.abs(outline.area()) - holes.stream().mapToDouble(hole -> Math.abs(hole.area())).sum();
    }

    /**
     * Whether it is an upright rectangle, which a shear can cut.
     *
     * @return true if so, holes aside
     */
    public boolean rectangle() {
        double box = outline.bounds().width() * outline.bounds().height();
        return Math.abs(outline.area()) > box * (1 - 1e-9);
    }
}
