package org.capwright.drawing;

/**
 * A running dimension: the distance of something from the drawing's left or lower edge, named.
 *
 * @param along along which edge it runs
 * @param positionMm where it is, in the drawing's own coordinates
 * @param reachMm how far across the drawing the thing is, where its line may end
 * @param text the distance as the shop writes it, and what is there
 */
public record Station(Side along, double positionMm, double reachMm, String text) {
    /** The edge along which running dimensions run. */
    public enum Side {
        /** Along the lower edge, from the left. */
        BOTTOM,
        /** Along the left edge, from the bottom. */
        LEFT
    }
}
