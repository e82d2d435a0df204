package org.capwright.stock.nest;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Whether two forms can lie beside each other in a room. With the first's corner at the origin, the second's corner may be
 * anywhere that keeps the bounds of both together within the room: a rectangle. They fit if the no-fit polygons leave any of it.
 */
record PairFit(List<Convex> noFit, Form first, Form second, double roomX, double roomY) {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double SLACK_MM = 1e-3;

    boolean exists() {
        // grown a little on the side of "they fit": only a clear no is a proof
        Geometry moves = rectangle(first.width - roomX - SLACK_MM, first.height - roomY - SLACK_MM, roomX - second.width
                + SLACK_MM,
                roomY - second.height + SLACK_MM);
        return !UnaryUnionOp.union(noFit.stream().map(PairFit::polygon).toList()).covers(moves);
    }

    private static Geometry polygon(Convex convex) {
        Coordinate[] ring = new Coordinate[convex.size() + 1];
        for (int i = 0; i < convex.size(); i++) {
            ring[i] = new Coordinate(convex.x[i], convex.y[i]);
        }
        ring[convex.size()] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }

    private static Geometry rectangle(double left, double low, double right, double high) {
        return FACTORY.createPolygon(new Coordinate[] {new Coordinate(left, low), new Coordinate(right, low),
            new Coordinate(right, high), new Coordinate(left, high), new Coordinate(left, low)});
    }
}
