package org.capwright.drawing;

import org.capwright.geom.Vec2;

/**
 * A line of writing.
 *
 * @param at the point it belongs to
 * @param text what it says
 * @param heightMm height of its capitals on true-size paper
 * @param turnRad direction of its base line
 * @param anchor which end of the writing stands at the point
 */
public record Label(Vec2 at, String text, double heightMm, double turnRad, Anchor anchor) {
    /** Which end of a line of writing stands at its point. */
    public enum Anchor {
        /** Its beginning. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its end. */
        END
    }
}
