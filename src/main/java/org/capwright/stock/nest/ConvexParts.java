package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Vec2;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** Cuts a polygon into convex ones: triangles, then joined again while they stay convex (Hertel and Mehlhorn, 1983). */
final class ConvexParts {
    private static final double HOLLOW = 1e-9;

    private ConvexParts() {
    }

    /** Convex polygons, counterclockwise, that make up a polygon. */
    static List<List<Vec2>> of(Polygon polygon) {
        List<Vec2> whole = corners(polygon);
        if (polygon.getNumInteriorRing() == 0 && convex(whole)) {
            return List.of(whole);
        }
        List<List<Vec2>> parts = new ArrayList<>();
        Geometry triangles = PolygonTriangulator.triangulate(polygon);
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            if (triangles.getGeometryN(i).getArea() > HOLLOW) {
                parts.add(corners((Polygon) triangles.getGeometryN(i)));
            }
        }
        while (joinTwo(parts)) {
            continue;
        }
        return parts;
    }

    private static boolean joinTwo(List<List<Vec2>> parts) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Optional<List<Vec2>> joined = joined(parts.get(i), parts.get(j));
                if (joined.isPresent()) {
                    parts.set(i, joined.get());
                    parts.remove(j);
                    return true;
                }
            }
        }
        return false;
    }

    /** Both as one, where they share an edge and the result is convex. */
    private static Optional<List<Vec2>> joined(List<Vec2> a, List<Vec2> b) {
        for (int i = 0; i < a.size(); i++) {
            int j = b.indexOf(a.get((i + 1) % a.size()));
            if (j >= 0 && b.get((j + 1) % b.size()).equals(a.get(i))) {
                List<Vec2> all = new ArrayList<>();
                for (int k = 1; k <= a.size(); k++) {
                    all.add(a.get((i + k) % a.size()));
                }
                for (int k = 2; k < b.size(); k++) {
                    all.add(b.get((j + k) % b.size()));
                }
                return convex(all) ? Optional.of(all) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static boolean convex(List<Vec2> corners) {
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Vec2 in = corners.get((i + 1) % n).minus(corners.get(i));
            Vec2 out = corners.get((i + 2) % n).minus(corners.get((i + 1) % n));
            if (in.cross(out) < -HOLLOW * in.norm() * out.norm()) {
                return false;
            }
        }
        return true;
    }

    private static List<Vec2> corners(Polygon polygon) {
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        List<Vec2> corners = new ArrayList<>(Arrays.stream(ring).limit(ring.length - 1L).map(c -> new Vec2(c.x, c.y)).toList());
        if (!Orientation.isCCW(ring)) {
            Collections.reverse(corners);
        }
        return corners;
    }
}
