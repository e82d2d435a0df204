package org.capwright.stock.nest;

import java.util.Arrays;

/**
 * Finds the leftmost, then lowest place that is free for a form: the corner of smallest x, then y, outside all no-fit
 * polygons and inside the frame {@code [0, frameX] x [0, frameY]}. Such a corner is where two boundaries meet whose outward
 * normals have +x between them, so only those are looked at.
 */
final class CornerPlace {
    private static final double SAME_MM = 1e-6;
    private static final double PARALLEL = 1e-9;

    private final double frameX;
    private final double frameY;
    private final double fromX;
    private final double fromY;
    private Convex[] polygons = new Convex[64];
    private double[] dx = new double[64];
    private double[] dy = new double[64];
    private int count;
    /** The polygon that was in the way last: likely to be so again. */
    private int last;
    private double bestX;
    private double bestY = Double.MAX_VALUE;
    private boolean found;
    private long steps;

    /** A search in a frame, for a place not before {@code from} and left of {@code limitX}. */
    CornerPlace(double frameX, double frameY, double fromX, double fromY, double limitX) {
        this.frameX = Math.max(0, frameX);
        this.frameY = Math.max(0, frameY);
        this.fromX = fromX;
        this.fromY = fromY;
        this.bestX = limitX;
    }

    /** Adds a no-fit polygon, moved. */
    void block(Convex polygon, double byX, double byY) {
        boolean touches = polygon.minX + byX < frameX + SAME_MM && polygon.maxX + byX > -SAME_MM
                && polygon.minY + byY < frameY + SAME_MM && polygon.maxY + byY > -SAME_MM;
        if (touches && polygon.maxX + byX > fromX - SAME_MM) {
            if (count == polygons.length) {
                polygons = Arrays.copyOf(polygons, 2 * count);
                dx = Arrays.copyOf(dx, 2 * count);
                dy = Arrays.copyOf(dy, 2 * count);
            }
            polygons[count] = polygon;
            dx[count] = byX;
            dy[count++] = byY;
        }
    }

    /** Looks at every corner; true where one is free. */
    boolean search() {
        offer(0, 0);
        for (int i = 0; i < count; i++) {
            frameCorners(i);
        }
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
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
        Convex p = polygons[i];
        steps += p.size();
        for (int k = 0; k < p.size(); k++) {
            double c = p.c[k] + p.nx[k] * dx[i] + p.ny[k] * dy[i];
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
        Convex a = polygons[i];
        Convex b = polygons[j];
        double right = Math.min(a.maxX + dx[i], b.maxX + dx[j]);
        return Math.max(a.minX + dx[i], b.minX + dx[j]) <= Math.min(right, bestX) + SAME_MM && right >= fromX - SAME_MM
                && Math.max(a.minY + dy[i], b.minY + dy[j]) <= Math.min(a.maxY + dy[i], b.maxY + dy[j]) + SAME_MM;
    }

    private void corners(int i, int j) {
        Convex a = polygons[i];
        Convex b = polygons[j];
        steps += (long) a.size() * b.size() / 4;
        for (int k = 0; k < a.size(); k++) {
            double c = a.c[k] + a.nx[k] * dx[i] + a.ny[k] * dy[i];
            for (int m = 0; m < b.size(); m++) {
                // +x lies between the two normals
                double cross = a.nx[k] * b.ny[m] - a.ny[k] * b.nx[m];
                boolean pocket = a.ny[k] >= 0 ? b.ny[m] <= 0 && cross < 0 : b.ny[m] >= 0 && cross > 0;
                if (pocket && Math.abs(cross) > PARALLEL) {
                    double d = b.c[m] + b.nx[m] * dx[j] + b.ny[m] * dy[j];
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
        steps++;
        if (last < count && polygons[last].holds(x - dx[last], y - dy[last], SAME_MM)) {
            return false;
        }
        for (int i = 0; i < count; i++) {
            if (polygons[i].holds(x - dx[i], y - dy[i], SAME_MM)) {
                steps += i;
                last = i;
                return false;
            }
        }
        steps += count;
        return true;
    }
}
