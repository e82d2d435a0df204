package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.Standoff;

/**
 * The curved lip over the standoffs' tops: how far it is above them, wherever a standoff stands below it. Outboard of the
 * rod axis the lip only rises; inboard of it it first sinks.
 */
final class StandoffClearance {
    private static final int STEPS = 8;

    private final Standoff standoff;
    private final LeafShape.ArcEdge lip;
    private final Motion motion;
    private final List<LeafShape.Point> over;

    private StandoffClearance(Leaf leaf, Standoff standoff) {
        this.standoff = standoff;
        this.motion = Motion.of(leaf);
        this.lip = LeafShape.of(leaf).arcs().get(1);
        this.over = over();
    }

    static Clearance of(Leaf leaf, Standoff standoff, double stopRad) {
        return Clearance.search(Pair.LIP_STANDOFF, leaf.number(), stopRad, new StandoffClearance(leaf, standoff)::at);
    }

    private Nearness at(double openRad) {
        Turn open = Turn.of(openRad);
        LeafShape.Point lowest = null;
        double lowestZ = Double.POSITIVE_INFINITY;
        for (LeafShape.Point point : over) {
            double z = motion.zMm(point.u(), point.w(), open);
            if (z < lowestZ) {
                lowest = point;
                lowestZ = z;
            }
        }
        if (lowest == null) {
            return Nearness.NONE;
        }
        Vec3 where = motion.at(lowest.u(), lowest.w(), lowest.y(), open);
        return new Nearness(where.z() - standoff.topZMm(), where);
    }

    /** The points of the lip that are over a standoff. A bracket spans from its web to the farther edge of its wider flange. */
    private List<LeafShape.Point> over() {
        List<LeafShape.Point> points = new ArrayList<>();
        double half = Math.max(standoff.outerHalfRad(), standoff.innerHalfRad());
        for (int i = 0; i < standoff.count(); i++) {
            double web = standoff.azimuthRad(i) - standoff.outerHalfRad();
            for (int step = 0; step <= STEPS; step++) {
                double azimuth = web + 2 * half * step / STEPS;
                // a mirror image's azimuth is as good: the leaf of the other side is one
                double u = lip.radiusMm() * Math.abs(Math.cos(azimuth)) - motion.axisMm();
                if (u >= lip.fromU() && u <= lip.toU()) {
                    points.add(new LeafShape.Point(u, lip.w(), lip.radiusMm() * Math.abs(Math.sin(azimuth))));
                }
            }
        }
        return points;
    }
}
