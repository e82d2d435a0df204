package org.capwright.metal;

/**
 * A finished edge.
 *
 * @param kind how it is finished
 * @param sizeMm width of the hem, or diameter of the wire; no matter for a plain edge
 */
public record Edge(EdgeKind kind, double sizeMm) {
    /** An edge as cut. */
    public static final Edge PLAIN = new Edge(EdgeKind.PLAIN, 0);

    /**
     * What it adds to the blank: W for a single hem, 2 W for a double one, 2.5 wire diameters for a wired edge (US Navy
     * Steelworker manual).
     *
     * @return mm
     */
    public double allowanceMm() {
        return switch (kind) {
            case PLAIN -> 0;
            case HEM -> sizeMm;
            case DOUBLE_HEM -> 2 * sizeMm;
            case WIRED -> 2.5 * sizeMm;
        };
    }
}
