package org.capwright.stock.nest;

/**
 * So many of a piece.
 *
 * @param piece the piece
 * @param quantity how many, at least 1
 */
public record Demand(Piece piece, int quantity) {
    /** Refuses to cut none. */
    public Demand {
        if (quantity < 1) {
            throw new IllegalArgumentException("quantity of " + piece.name() + " must be at least 1, not " + quantity);
        }
    }
}
