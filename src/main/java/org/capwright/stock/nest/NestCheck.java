package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Checks a layout piece against piece with JTS, from the true outlines and by other means than those it was made with: distance
 * of every two, overlap, and distance to the edge. Arcs are taken by chords that keep to a hundredth of a millimetre, so
 * anything within two hundredths is let pass.
 */
public final class NestCheck {
    /** How much may be missing. */
    public static final double TOLERANCE_MM = 0.02;
    private static final double CHORD_MM = 0.01;

    private final SheetLayout layout;
    private final NestRules rules;
    private final List<Polygon> polygons;
    private final List<String> problems = new ArrayList<>();

    private NestCheck(SheetLayout layout, NestRules rules) {
        this.layout = layout;
        this.rules = rules;
        double smallest = layout.placements().stream().mapToDouble(one -> Math.abs(one.piece().outline().area())).min().orElse(0);
        this.polygons = layout.placements().stream().map(one -> Cover.along(one.outline(),
                Cover.roomy(one.piece(), smallest).stream().map(one::placed).toList(), CHORD_MM)).toList();
    }

    /**
     * What is wrong with a layout.
     *
     * @param layout a sheet
     * @param rules what it must keep to
     * @return a line for each fault; empty where it is valid
     */
    public static List<String> problems(SheetLayout layout, NestRules rules) {
        NestCheck check = new NestCheck(layout, rules);
        Envelope inside = new Envelope(rules.marginMm(), layout.size().lengthMm() - rules.marginMm(), rules.marginMm(),
                layout.size().widthMm() - rules.marginMm());
        inside.expandBy(TOLERANCE_MM);
        for (int i = 0; i < check.polygons.size(); i++) {
            if (!inside.contains(check.polygons.get(i).getEnvelopeInternal())) {
                check.problems.add(check.name(i) + " is nearer to the edge than the margin");
            }
            for (int j = 0; j < i; j++) {
                check.pair(i, j);
            }
        }
        return List.copyOf(check.problems);
    }

    private void pair(int i, int j) {
        Polygon a = polygons.get(i);
        Polygon b = polygons.get(j);
        double asked = rules.spacingMm() - TOLERANCE_MM;
        if (a.getEnvelopeInternal().distance(b.getEnvelopeInternal()) > Math.max(asked, 0)) {
            return;
        }
        if (asked > 0) {
            double distance = a.distance(b);
            if (distance < asked) {
                problems.add(String.format(Locale.ROOT, "%s and %s are %.3f mm apart", name(i), name(j), distance));
            }
        } else if (a.buffer(-TOLERANCE_MM / 2).intersects(b.buffer(-TOLERANCE_MM / 2))) {
            problems.add(name(i) + " and " + name(j) + " overlap");
        }
    }

    private String name(int i) {
        Placement one = layout.placements().get(i);
        return one.piece().name() + " (piece " + (i + 1) + " of " + layout.size().name() + ")";
    }
}
