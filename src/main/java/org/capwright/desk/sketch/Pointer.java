package org.capwright.desk.sketch;

import org.capwright.geom.Vec2;

/**
 * What a small drawing points at.
 *
 * @param view which drawing
 * @param openRad opening of the leaves, radians
 * @param part the part that stands out, by its group in a job; empty for none
 * @param from one end of the span that is pointed at, mm in the drawing's plane
 * @param to the other end; the same point for a place
 * @param aroundMm how much of the cap to show round it; 0 for all
 */
public record Pointer(View view, double openRad, String part, Vec2 from, Vec2 to, double aroundMm) {
    private static final double NEAR = 3;

    /** Which drawing. */
    public enum View {
        /** Across the rods. */
        SECTION,
        /** From above. */
        PLAN
    }

    /**
     * A part and nothing else.
     *
     * @param view which drawing
     * @param part by its group in a job
     * @return the pointer
     */
    public static Pointer part(View view, String part) {
        return new Pointer(view, 0, part, null, null, 0);
    }

    /**
     * A span, shown near enough to be seen.
     *
     * @param view which drawing
     * @param part the part that stands out, may be empty
     * @param from one end
     * @param to the other end
     * @return the pointer
     */
    public static Pointer span(View view, String part, Vec2 from, Vec2 to) {
        return new Pointer(view, 0, part, from, to, NEAR * from.distance(to));
    }

    /**
     * The same with the leaves open.
     *
     * @param rad opening, radians
     * @return a new pointer
     */
    public Pointer open(double rad) {
        return new Pointer(view, rad, part, from, to, aroundMm);
    }

    /**
     * Whether it points at a span or a place.
     *
     * @return false where only a part stands out
     */
    public boolean points() {
        return from != null;
    }
}
