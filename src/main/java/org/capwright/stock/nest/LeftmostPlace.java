package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the leftmost, then lowest place that is free for a form: the corner of smallest x, then y, outside all no-fit
 * polygons and inside the frame {@code [0, frameX] x [0, frameY]}. Such a corner is where two boundaries meet whose outward
 * normals have +x between them, so only those are looked at.
 */
final class LeftmostPlace {
    private static final double SAME_MM = 1e-6;

    private final double frameX;
    private final double frameY;
    private final double fromX;
    private final double fromY;
    private final List<Convex> polygons = new ArrayList<>();
    private final List<double[]> at = new ArrayList<>();
    private double bestX;
    private double bestY = Double.MAX_VALUE;
    private boolean found;
    private long steps;

    /** A search in a frame, for a place not before {@code from} and left of {@code limitX}. */
    LeftmostPlace(double frameX, double frameY, double fromX, double fromY, double limitX) {
        this.frameX = Math.max(0, frameX);
        this.frameY = Math.max(0, frameY);
        this.fromX = fromX;
        this.fromY = fromY;
        this.bestX = limitX;
    }

    /** Adds a no-fit polygon, moved. */
    void block(Convex polygon, double dx, double dy) {
        boolean touches = polygon.minX + dx < frameX + SAME_MM && polygon.maxX + dx > -SAME_MM
                && polygon.minY + dy < frameY + SAME_MM && polygon.maxY + dy > -SAME_MM;
        if (touches && polygon.maxX + dx > fromX - SAME_MM) {
            polygons.add(polygon);
            at.add(new double[] {dx, dy});
        }
    }

    /** Looks at every corner; true where one is free. */
    boolean search() {
        offer(0, 0);
        for (int i = 0; i < polygons.size(); i++) {
            frameCorners(i);
        }
        for (int i = 0; i < polygons.size(); i++) {
            for (int j = i + 1; j < polygons.size(); j++) {
                if (near(i, j)) {
                    corners(i, j);
                }
            }
        }
        return found;
    }

    double x() {
        return bestX;
    }

    double y() {
        return bestY;
    }

    long steps() {
        return steps;
    }

    /** Corners of a polygon's boundary with the frame's left, lower and upper side. */
    private void frameCorners(int i) {
        Convex p = polygons.get(i);
        double dx = at.get(i)[0];
        double dy = at.get(i)[1];
        steps += p.size();
        for (int k = 0; k < p.size(); k++) {
            double c = p.c[k] + p.nx[k] * dx + p.ny[k] * dy;
            if (p.ny[k] > 0) {
                offer(0, c / p.ny[k]);
            }
            if (p.nx[k] > 0 && p.ny[k] <= 0) {
                offer(c / p.nx[k], 0);
            }
            if (p.nx[k] > 0 && p.ny[k] >= 0) {
                offer((c - p.ny[k] * frameY) / p.nx[k], frameY);
            }
        }
    }

    private boolean near(int i, int j) {
        Convex a = polygons.get(i);
        Convex b = polygons.get(j);
        double[] p = at.get(i);
        double[] q = at.get(j);
        return Math.max(a.minX + p[0], b.minX + q[0]) <= Math.min(Math.min(a.maxX + p[0], b.maxX + q[0]), bestX) + SAME_MM
                && Math.min(a.maxX + p[0], b.maxX + q[0]) >= fromX - SAME_MM
                && Math.max(a.minY + p[1], b.minY + q[1]) <= Math.min(a.maxY + p[1], b.maxY + q[1]) + SAME_MM;
    }

    private void corners(int i, int j) {
        Convex a = polygons.get(i);
        Convex b = polygons.get(j);
        steps += (long) a.size() * b.size() / 4;
        for (int k = 0; k < a.size(); k++) {
            double c = a.c[k] + a.nx[k] * at.get(i)[0] + a.ny[k] * at.get(i)[1];
            for (int m = 0; m < b.size(); m++) {
                // +x lies between the two normals
                double cross = a.nx[k] * b.ny[m] - a.ny[k] * b.nx[m];
                boolean pocket = a.ny[k] >= 0 ? b.ny[m] <= 0 && cross < 0 : b.ny[m] >= 0 && cross > 0;
                if (pocket && Math.abs(cross) > 1e-9) {
                    double d = b.c[m] + b.nx[m] * at.get(j)[0] + b.ny[m] * at.get(j)[1];
                    offer((c * b.ny[m] - d * a.ny[k]) / cross, (a.nx[k] * d - b.nx[m] * c) / cross);
                }
            }
        }
    }

    /** Takes a place if it is in the frame, better than the best so far and free. */
    private void offer(double px, double py) {
        if (px < -SAME_MM || px > frameX + SAME_MM || py < -SAME_MM || py > frameY + SAME_MM) {
            return;
        }
        double x = Math.max(0, Math.min(frameX, px));
        double y = Math.max(0, Math.min(frameY, py));
        boolean better = x < bestX - SAME_MM || found && x < bestX + SAME_MM && y < bestY - SAME_MM;
        boolean later = x > fromX + SAME_MM || x > fromX - SAME_MM && y > fromY - SAME_MM;
        if (better && later && free(x, y)) {
            bestX = x;
            bestY = y;
            found = true;
        }
    }

    private boolean free(double x, double y) {
        for (int i = 0; i < polygons.size(); i++) {
            if (polygons.get(i).holds(x - at.get(i)[0], y - at.get(i)[1], SAME_MM)) {
                steps += i;
                return false;
            }
        }
        steps += polygons.size();
        return true;
    }
}
