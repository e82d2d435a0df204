package org.capwright.stock.nest;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/**
 * Where a piece lies on its sheet: turned about its own origin, then moved.
 *
 * @param piece the piece
 * @param turns quarter turns from +x towards +y, 0 to 3
 * @param at where its origin comes to lie
 */
public record Placement(Piece piece, int turns, Vec2 at) {
    /**
     * Its outline on the sheet.
     *
     * @return a closed path
     */
    public Path outline() {
        return placed(piece.outline());
    }

    /**
     * Its holes on the sheet.
     *
     * @return closed paths
     */
    public List<Path> holes() {
        return piece.holes().stream().map(this::placed).toList();
    }

    /**
     * Any path of the piece, on the sheet.
     *
     * @param path in the piece's own frame
     * @return the same on the sheet
     */
    public Path placed(Path path) {
        return path.rotated(turns * Math.PI / 2).translated(at);
    }
}
