package org.capwright.export.figure;

import java.util.ArrayList;
import java.util.List;

/** Collects figures under a prefix. */
final class FigureList {
    private final List<Figure> figures = new ArrayList<>();

    FigureList mm(String id, double value) {
        return add(id, value, "mm");
    }

    FigureList degrees(String id, double rad) {
        return add(id, Math.toDegrees(rad), "deg");
    }

    FigureList kg(String id, double value) {
        return add(id, value, "kg");
    }

    FigureList number(String id, double value) {
        return add(id, value, "");
    }

    FigureList add(String id, double value, String unit) {
        figures.add(new Figure(id, value, unit));
        return this;
    }

    List<Figure> figures() {
        return List.copyOf(figures);
    }
}
