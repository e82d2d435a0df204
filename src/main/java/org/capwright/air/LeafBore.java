package org.capwright.air;

import org.capwright.part.Cap;
import org.capwright.part.CircularStrip;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;

/**
 * The part of the bore that blows on one leaf: the strip of the disc R_si from the outside of the leaf's own gutter to the
 * bore's edge or, for an inner leaf, to the outside of the next gutter or its own free edge, whichever comes first.
 *
 * @param boreRadiusMm sleeve inside radius, R_si
 * @param fromMm inner chord, x
 * @param toMm outer chord, x; the bore's radius for the outermost leaf
 * @param axisMm rod axis, x_r
 * @param reachMm free edge from the rod axis: {@code R_l - x_r}, or {@code x_f - x_r} for an inner leaf
 */
public record LeafBore(double boreRadiusMm, double fromMm, double toMm, double axisMm, double reachMm) {
    /** The bore of a leaf. */
    static LeafBore of(Cap cap, Leaf leaf) {
        int i = leaf.number() - 1;
        Gutter own = cap.gutters().get(i);
        double radius = cap.sleeve().insideRadiusMm();
        double to = radius;
        if (i + 1 < cap.gutters().size()) {
            Gutter next = cap.gutters().get(i + 1);
            to = Math.min(Math.min(radius, leaf.slab().freeEdgeMm()), next.jointMm() - next.outsideWidthMm() / 2);
        }
        return new LeafBore(radius, own.jointMm() + own.outsideWidthMm() / 2, to, leaf.rodAxisMm(), leaf.reachMm());
    }

    /**
     * Where the free edge's shadow falls while the leaf is open: {@code x_r + (R_l - x_r) cos theta}.
     *
     * @param openRad opening, theta
     * @return x, mm
     */
    public double shadowMm(double openRad) {
        return axisMm + reachMm * Math.cos(openRad);
    }

    /**
     * First moment about the rod axis of all of the strip, S: {@code integral of (x - x_r) dA}.
     *
     * @return mm3
     */
    public double wholeMm3() {
        return upToMm3(toMm);
    }

    /**
     * First moment about the rod axis of the part of the strip that the leaf intercepts at an opening, S(theta): out to its
     * shadow.
     *
     * @param openRad opening, theta, at most a right angle
     * @return mm3, 0 where the shadow falls on the gutter
     */
    public double interceptedMm3(double openRad) {
        return upToMm3(Math.min(toMm, shadowMm(openRad)));
    }

    /**
     * Opening up to which the leaf intercepts the whole strip: {@code cos theta = (to - x_r) / (R_l - x_r)}.
     *
     * @return radians
     */
    public double wholeUntilRad() {
        return Math.acos(Math.min(1, (toMm - axisMm) / reachMm));
    }

    private double upToMm3(double xMm) {
        if (xMm <= fromMm) {
            return 0;
        }
        return CircularStrip.momentMm3(boreRadiusMm, fromMm, xMm)
                - axisMm * CircularStrip.areaMm2(boreRadiusMm, fromMm, xMm);
    }
}
