package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Vec2;

/** A convex polygon, counterclockwise, with the outward normals of its edges ready to hand. */
final class Convex {
    private static final double SHORT_MM = 1e-7;

    /** Corners. */
    final double[] x;
    final double[] y;
    /** Outward unit normal of the edge that begins at each corner. */
    final double[] nx;
    final double[] ny;
    /** Distance of that edge from the origin along its normal. */
    final double[] c;
    final double minX;
    final double minY;
    final double maxX;
    final double maxY;

    private Convex(List<Vec2> corners) {
        int n = corners.size();
        x = corners.stream().mapToDouble(Vec2::x).toArray();
        y = corners.stream().mapToDouble(Vec2::y).toArray();
        nx = new double[n];
        ny = new double[n];
        c = new double[n];
        double left = Double.MAX_VALUE;
        double low = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int i = 0; i < n; i++) {
            double dx = x[(i + 1) % n] - x[i];
            double dy = y[(i + 1) % n] - y[i];
            double length = Math.hypot(dx, dy);
            nx[i] = dy / length;
            ny[i] = -dx / length;
            c[i] = nx[i] * x[i] + ny[i] * y[i];
            left = Math.min(left, x[i]);
            low = Math.min(low, y[i]);
            right = Math.max(right, x[i]);
            high = Math.max(high, y[i]);
        }
        minX = left;
        minY = low;
        maxX = right;
        maxY = high;
    }

    /** A polygon from its corners, counterclockwise; edges too short to have a direction are dropped. */
    static Convex of(List<Vec2> corners) {
        List<Vec2> kept = new ArrayList<>();
        for (Vec2 corner : corners) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).distance(corner) > SHORT_MM) {
                kept.add(corner);
            }
        }
        if (kept.size() > 1 && kept.get(0).distance(kept.get(kept.size() - 1)) <= SHORT_MM) {
            kept.remove(kept.size() - 1);
        }
        return new Convex(kept);
    }

    /** Mirrored at the diagonal: x and y change places. */
    Convex mirrored() {
        List<Vec2> corners = new ArrayList<>();
        for (int i = size() - 1; i >= 0; i--) {
            corners.add(new Vec2(y[i], x[i]));
        }
        return new Convex(corners);
    }

    int size() {
        return x.length;
    }

    /** Whether a point lies inside by more than a tolerance. */
    boolean holds(double px, double py, double toleranceMm) {
        if (px <= minX + toleranceMm || px >= maxX - toleranceMm || py <= minY + toleranceMm || py >= maxY - toleranceMm) {
            return false;
        }
        for (int i = 0; i < nx.length; i++) {
            if (nx[i] * px + ny[i] * py > c[i] - toleranceMm) {
                return false;
            }
        }
        return true;
    }

    /**
     * The places of {@code other} (of its origin) where it overlaps this: the Minkowski sum of this and the other turned half
     * round. Edges of both, sorted by direction, laid end to end (textbook construction for convex polygons).
     */
    Convex noFit(Convex other) {
        int i = lowest(y, x, 1);
        int j = lowest(other.y, other.x, -1);
        Vec2 pen = new Vec2(x[i] - other.x[j], y[i] - other.y[j]);
        List<Vec2> corners = new ArrayList<>();
        int doneA = 0;
        int doneB = 0;
        while (doneA < size() || doneB < other.size()) {
            corners.add(pen);
            double cross = doneA == size() ? -1 : doneB == other.size() ? 1 : cross(i, other, j);
            Vec2 step = Vec2.ZERO;
            if (cross >= 0) {
                step = step.plus(edge(i));
                i = (i + 1) % size();
                doneA++;
            }
            if (cross <= 0) {
                step = step.minus(other.edge(j));
                j = (j + 1) % other.size();
                doneB++;
            }
            pen = pen.plus(step);
        }
        return of(corners);
    }

    /** Over 0 where this edge comes before the other's reversed one. */
    private double cross(int i, Convex other, int j) {
        double cross = edge(i).cross(other.edge(j).times(-1));
        double scale = edge(i).norm() * other.edge(j).norm();
        return Math.abs(cross) < 1e-12 * scale ? 0 : cross;
    }

    private Vec2 edge(int i) {
        int next = (i + 1) % size();
        return new Vec2(x[next] - x[i], y[next] - y[i]);
    }

    /** The corner with the least {@code sign * first}, then the least {@code sign * second}. */
    private static int lowest(double[] first, double[] second, int sign) {
        int best = 0;
        for (int i = 1; i < first.length; i++) {
            double a = sign * (first[i] - first[best]);
            if (a < 0 || a == 0 && sign * (second[i] - second[best]) < 0) {
                best = i;
            }
        }
        return best;
    }
}
