package org.capwright.drawing;

/**
 * A running dimension: something whose distance from the drawing's left or lower edge is worth writing down. The distance
 * itself is left to whoever prints it.
 *
 * @param along along which edge it runs
 * @param positionMm where it is, in the drawing's own coordinates
 * @param reachMm how far across the drawing the thing is, where its line may end
 * @param what what is there
 */
public record Station(Side along, double positionMm, double reachMm, String what) {
    /** The edge along which running dimensions run. */
    public enum Side {
        /** Along the lower edge, from the left. */
        BOTTOM,
        /** Along the left edge, from the bottom. */
        LEFT
    }

    /**
     * A running dimension along the lower edge.
     *
     * @param xMm where the thing is
     * @param reachMm y of the thing
     * @param what what it is
     * @return the dimension
     */
    public static Station bottom(double xMm, double reachMm, String what) {
        return new Station(Side.BOTTOM, xMm, reachMm, what);
    }

    /**
     * A running dimension along the left edge.
     *
     * @param yMm where the thing is
     * @param reachMm x of the thing
     * @param what what it is
     * @return the dimension
     */
    public static Station left(double yMm, double reachMm, String what) {
        return new Station(Side.LEFT, yMm, reachMm, what);
    }
}
