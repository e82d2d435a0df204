package org.capwright.export.pdf;

import java.util.List;
import org.capwright.geom.Vec2;

/**
 * A reference on its way into a column: the place on the page it belongs to, and its lines.
 *
 * @param at the place
 * @param lines what it says
 */
record Note(Vec2 at, List<String> lines) {
    private static final double LINE_MM = 4;

    /** How much of the column it takes. */
    double heightMm() {
        return DrawingStyle.ROW_MM + (lines.size() - 1) * LINE_MM;
    }

    /** Base line of one of its lines, its middle at a height. */
    double baseline(double middle, int line) {
        return middle + LINE_MM * ((lines.size() - 1) / 2.0 - line) - DrawingStyle.TEXT_MM / 2;
    }
}
