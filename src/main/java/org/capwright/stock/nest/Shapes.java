package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.locationtech.jts.geom.Polygon;

/** The forms of all pieces of a task, and the no-fit polygons of every two of them, made when first asked for. */
final class Shapes {
    private static final double HOLLOW_SHARE = 0.3;
    private static final double HOLLOW_OF_OWN = 0.001;

    private final List<List<Form>> forms = new ArrayList<>();
    private final List<Double> areas = new ArrayList<>();
    private final List<List<Convex>> noFits = new ArrayList<>();
    private final List<List<Convex>> mirrored = new ArrayList<>();
    private final int count;

    private Shapes(NestTask task, List<Polygon> grown) {
        AtomicInteger next = new AtomicInteger();
        for (int i = 0; i < grown.size(); i++) {
            forms.add(distinct(Form.of(grown.get(i), task.demands().get(i).piece().turns(), next)));
            areas.add(grown.get(i).getArea());
        }
        count = next.get();
        for (int i = 0; i < count * count; i++) {
            noFits.add(null);
            mirrored.add(null);
        }
    }

    /** Shapes that hold the pieces and half the spacing: what lies apart as these shapes lies apart in truth. */
    static Shapes outer(NestTask task) {
        double smallest = smallest(task.demands());
        return new Shapes(task, task.demands().stream().map(demand -> {
            Polygon cover = Cover.around(demand.piece().outline(), Cover.roomy(demand.piece(), smallest));
            double hollow = Math.max(HOLLOW_SHARE * smallest, HOLLOW_OF_OWN * cover.getArea());
            return Cover.grown(Cover.filled(cover, hollow), task.rules().spacingMm() / 2);
        }).toList());
    }

    /** Shapes within the pieces and half the spacing: what finds no room as these shapes finds none in truth. */
    static Shapes inner(NestTask task) {
        double smallest = smallest(task.demands());
        return new Shapes(task, task.demands().stream().map(demand -> Cover.within(demand.piece().outline(),
                Cover.roomy(demand.piece(), smallest), task.rules().spacingMm() / 2)).toList());
    }

    /** The smallest area within an outline: no smaller hole has room for any piece. */
    static double smallest(List<Demand> demands) {
        return demands.stream().mapToDouble(demand -> Math.abs(demand.piece().outline().area())).min().orElse(0);
    }

    /** Leaves out turns that look like an earlier one: a circle needs one, a rectangle two. */
    private static List<Form> distinct(List<Form> forms) {
        List<Form> kept = new ArrayList<>();
        for (Form form : forms) {
            if (kept.stream().noneMatch(one -> alike(one, form))) {
                kept.add(form);
            }
        }
        return kept;
    }

    private static boolean alike(Form a, Form b) {
        return a.parts.size() == 1 && b.parts.size() == 1 && contains(a.parts.get(0), b.parts.get(0))
                && contains(b.parts.get(0), a.parts.get(0));
    }

    private static boolean contains(Convex a, Convex b) {
        for (int i = 0; i < b.size(); i++) {
            for (int k = 0; k < a.size(); k++) {
                if (a.nx[k] * b.x[i] + a.ny[k] * b.y[i] > a.c[k] + 1e-6) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The forms of a demand's piece. */
    List<Form> forms(int demand) {
        return forms.get(demand);
    }

    /** Area of a demand's piece, grown. */
    double areaMm2(int demand) {
        return areas.get(demand);
    }

    /** Where {@code moving} may not lie while {@code fixed} lies at the origin. */
    List<Convex> noFit(Form fixed, Form moving) {
        int key = fixed.index * count + moving.index;
        List<Convex> known = noFits.get(key);
        if (known == null) {
            known = new ArrayList<>();
            for (Convex a : fixed.parts) {
                for (Convex b : moving.parts) {
                    known.add(a.noFit(b));
                }
            }
            noFits.set(key, known);
        }
        return known;
    }

    /** The same mirrored at the diagonal. */
    List<Convex> mirroredNoFit(Form fixed, Form moving) {
        int key = fixed.index * count + moving.index;
        List<Convex> known = mirrored.get(key);
        if (known == null) {
            known = noFit(fixed, moving).stream().map(Convex::mirrored).toList();
            mirrored.set(key, known);
        }
        return known;
    }
}
