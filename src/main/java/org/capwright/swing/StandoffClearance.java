package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.Standoff;

/**
 * The curved lip over the standoffs' tops: how far it is above them, wherever a standoff stands below it. Outboard of the
 * rod axis the lip only rises; inboard of it it first sinks.
 */
final class StandoffClearance {
    private static final int STEPS = 8;

    private final Leaf leaf;
    private final Standoff standoff;
    private final LeafShape.ArcEdge lip;
    private final Motion motion;

    private StandoffClearance(Leaf leaf, Standoff standoff) {
        this.leaf = leaf;
        this.standoff = standoff;
        this.motion = Motion.of(leaf);
        this.lip = LeafShape.of(leaf).arcs().get(1);
    }

    static Clearance of(Leaf leaf, Standoff standoff, double stopRad) {
        return Clearance.search(Pair.LIP_STANDOFF, leaf.number(), stopRad, new StandoffClearance(leaf, standoff)::at);
    }

    private Nearness at(double open) {
        Nearness nearest = Nearness.NONE;
        for (int i = 0; i < standoff.count(); i++) {
            nearest = nearest.orNearer(over(standoff.azimuthRad(i), open));
        }
        return nearest;
    }

    /** A bracket spans from its web to the farther edge of its wider flange. */
    private Nearness over(double azimuth, double open) {
        double half = Math.max(standoff.outerHalfRad(), standoff.innerHalfRad());
        double web = azimuth - standoff.outerHalfRad();
        Nearness nearest = Nearness.NONE;
        for (int i = 0; i <= STEPS; i++) {
            double at = web + 2 * half * i / STEPS;
            // a mirror image's azimuth is as good: the leaf of the other side is one
            double x = lip.radiusMm() * Math.abs(Math.cos(at));
            double u = x - leaf.rodAxisMm();
            if (u >= lip.fromU() && u <= lip.toU()) {
                Vec3 where = motion.at(u, lip.w(), lip.radiusMm() * Math.abs(Math.sin(at)), open);
                nearest = nearest.orNearer(new Nearness(where.z() - standoff.topZMm(), where));
            }
        }
        return nearest;
    }
}
