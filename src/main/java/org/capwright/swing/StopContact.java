package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.StopBar;

/**
 * How a leaf meets its stop bar.
 *
 * @param number number of the leaf and of the bar
 * @param openRad opening at which they meet
 * @param armMm distance along the leaf from the rod axis to the bar's lower corner
 * @param reachMm length of the leaf from its rod axis: an arm beyond it misses the leaf
 * @param where the bar's corner
 */
public record StopContact(int number, double openRad, double armMm, double reachMm, Vec3 where) {
    static StopContact of(Leaf leaf, StopBar bar) {
        double axis = leaf.rodAxisMm() - bar.jointMm();
        double open = StopBar.openRad(axis, leaf.rodAxisZMm(), leaf.rodRadiusMm(), bar.cornerZMm(), bar.halfWidthMm());
        return new StopContact(leaf.number(), open, bar.contactArmMm(axis, leaf.rodAxisZMm(), open), leaf.reachMm(),
                new Vec3(bar.jointMm() + bar.halfWidthMm(), 0, bar.cornerZMm()));
    }

    /**
     * How much of the leaf is left beyond the contact.
     *
     * @return mm, negative where the leaf passes the bar by
     */
    public double marginMm() {
        return reachMm - armMm;
    }
}
