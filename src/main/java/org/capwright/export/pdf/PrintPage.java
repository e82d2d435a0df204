package org.capwright.export.pdf;

import java.io.IOException;
import org.capwright.geom.Bounds;

/**
 * A page before it is written.
 *
 * @param widthMm width of the paper
 * @param heightMm height of the paper
 * @param title what is on it
 * @param subtitle more about it
 * @param painting what to draw inside the frame
 * @param bars whether scale bars stand round it; a letter needs none
 */
record PrintPage(double widthMm, double heightMm, String title, String subtitle, Painting painting, boolean bars) {
    /** A page with scale bars. */
    PrintPage(double widthMm, double heightMm, String title, String subtitle, Painting painting) {
        this(widthMm, heightMm, title, subtitle, painting, true);
    }

    /** Draws what is inside a page's frame. */
    @FunctionalInterface
    interface Painting {
        /** Draws into the free area of the page. */
        void paint(Canvas canvas, Bounds area) throws IOException;
    }
}
