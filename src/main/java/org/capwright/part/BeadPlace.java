package org.capwright.part;

import java.util.ArrayList;
import java.util.List;

/** Finds where a rule may put a bead: as near as can be to where it belongs, clear of holes, plates and other beads. */
final class BeadPlace {
    private static final double ROUNDING_MM = 1e-9;

    private final double leastMm;
    private final double mostMm;
    private final List<Taken> taken = new ArrayList<>();

    /** A stretch of heights in which the middle of the bead must not lie. */
    private record Taken(double fromMm, double toMm) {
    }

    /** A bead whose middle may lie from a least to a most height. */
    BeadPlace(double leastMm, double mostMm) {
        this.leastMm = leastMm;
        this.mostMm = mostMm;
    }

    /** The bead's middle must stay so far from a height. */
    BeadPlace keepOff(double heightMm, double apartMm) {
        taken.add(new Taken(heightMm - apartMm, heightMm + apartMm));
        return this;
    }

    /** The nearest height that is free; the wanted one where none is, so that a check tells. */
    double nearest(double wantedMm) {
        if (free(wantedMm)) {
            return wantedMm;
        }
        double best = Double.NaN;
        for (Taken one : taken) {
            for (double at : new double[] {one.fromMm, one.toMm}) {
                boolean nearer = Double.isNaN(best) || Math.abs(at - wantedMm) < Math.abs(best - wantedMm);
                best = nearer && free(at) ? at : best;
            }
        }
        return Double.isNaN(best) ? wantedMm : best;
    }

    private boolean free(double atMm) {
        return atMm >= leastMm && atMm <= mostMm
                && taken.stream().noneMatch(one -> atMm > one.fromMm + ROUNDING_MM && atMm < one.toMm - ROUNDING_MM);
    }
}
