package org.capwright.fitup;

import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;

/**
 * A reading of a round part.
 *
 * @param path where it is typed
 * @param kind what was measured
 * @param azimuthRad azimuth; of no account for a girth
 * @param valueMm what was read
 * @param accuracyMm how far off it may be, either way, 19 times in 20
 * @param baseMm for a gap: distance of the sleeve's outside from the axis at that azimuth; else 0
 */
public record Reading(String path, Kind kind, double azimuthRad, double valueMm, double accuracyMm, double baseMm) {
    /** What was measured. */
    public enum Kind {
        /** Tape round the part. */
        GIRTH,
        /** Right across it. */
        DIAMETER,
        /** From the stack's axis. */
        RADIUS,
        /** From the sleeve's outside. */
        GAP
    }

    /**
     * What the reading exceeds an outline by. A girth is compared with {@code 2 pi R} (an ovality of a hundredth of R lengthens it by
     * a ten-thousandth), a diameter with {@code 2 (R + A cos 2 phi + B sin 2 phi)} through the outline's own centre; a radius or a gap
     * gives a point, and its distance outside of the outline counts.
     *
     * @param outline the outline
     * @return mm
     */
    public double residualMm(Oval outline) {
        return switch (kind) {
            case GIRTH -> valueMm - 2 * Math.PI * outline.radiusMm();
            case DIAMETER -> valueMm - 2 * outline.radiusMm(azimuthRad);
            case RADIUS, GAP -> {
                Vec2 point = Vec2.polar(baseMm + valueMm, azimuthRad);
                yield -outline.insideMm(point.x(), point.y());
            }
        };
    }

    /**
     * Its standard deviation.
     *
     * @return half its accuracy, mm
     */
    public double deviationMm() {
        return accuracyMm / 2;
    }
}
