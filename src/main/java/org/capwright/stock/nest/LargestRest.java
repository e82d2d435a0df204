package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Bounds;

/** The largest upright rectangle of a sheet that is clear of the bounds of all pieces. */
final class LargestRest {
    private final Bounds sheet;
    private final List<Bounds> boxes;
    private final double leastMm;
    private Bounds best;

    private LargestRest(Bounds sheet, List<Bounds> boxes, double leastMm) {
        this.sheet = sheet;
        this.boxes = boxes.stream().sorted(Comparator.comparingDouble(Bounds::minY)).toList();
        this.leastMm = Math.max(leastMm, 1);
    }

    /** The rectangle, if both its sides are long enough. Its left and right side each lie along a box or the sheet's edge. */
    static Optional<Bounds> of(Bounds sheet, List<Bounds> boxes, double leastMm) {
        LargestRest rest = new LargestRest(sheet, boxes, leastMm);
        List<Double> lefts = new ArrayList<>(boxes.stream().map(Bounds::maxX).toList());
        lefts.add(sheet.minX());
        List<Double> rights = new ArrayList<>(boxes.stream().map(Bounds::minX).toList());
        rights.add(sheet.maxX());
        for (double left : lefts) {
            for (double right : rights) {
                rest.between(left, right);
            }
        }
        return Optional.ofNullable(rest.best);
    }

    /** The gaps between the boxes, from the bottom up. */
    private void between(double left, double right) {
        double width = right - left;
        if (width < leastMm || width * sheet.height() <= area()) {
            return;
        }
        double low = sheet.minY();
        for (Bounds box : boxes) {
            if (box.maxX() > left && box.minX() < right) {
                offer(left, right, low, box.minY());
                low = Math.max(low, box.maxY());
            }
        }
        offer(left, right, low, sheet.maxY());
    }

    private void offer(double left, double right, double low, double high) {
        if (high - low >= leastMm && (right - left) * (high - low) > area()) {
            best = new Bounds(left, low, right, high);
        }
    }

    private double area() {
        return best == null ? 0 : best.width() * best.height();
    }
}
