package org.capwright.stock.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.capwright.blank.Polygons;
import org.capwright.geom.Path;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Checks layouts with JTS on polygons of the tests' own making: area of overlap, distance, edges. */
final class LayoutProof {
    /** Two thousand chords to a turn leave a circle of 1 m by less than 2 micrometres. */
    private static final double SLACK_MM = 0.005;

    private LayoutProof() {
    }

    static void valid(Nest nest) {
        nest.sheets().forEach(sheet -> valid(sheet, nest.task().rules()));
    }

    private static void valid(SheetLayout sheet, NestRules rules) {
        List<Geometry> polygons = sheet.placements().stream().map(LayoutProof::shape).toList();
        Envelope inside = new Envelope(rules.marginMm() - SLACK_MM, sheet.size().lengthMm() - rules.marginMm() + SLACK_MM,
                rules.marginMm() - SLACK_MM, sheet.size().widthMm() - rules.marginMm() + SLACK_MM);
        for (int i = 0; i < polygons.size(); i++) {
            assertThat(inside.contains(polygons.get(i).getEnvelopeInternal())).as("%s inside", sheet.placements().get(i))
                    .isTrue();
            for (int j = 0; j < i; j++) {
                Geometry a = polygons.get(i);
                Geometry b = polygons.get(j);
                if (rules.spacingMm() > 0) {
                    assertThat(a.distance(b)).as("%s and %s", i, j).isGreaterThanOrEqualTo(rules.spacingMm() - SLACK_MM);
                } else {
                    assertThat(a.intersection(b).getArea()).as("overlap of %s and %s", i, j)
                            .isLessThan(SLACK_MM * (a.getLength() + b.getLength()));
                }
            }
        }
    }

    private static Geometry shape(Placement placement) {
        Geometry shape = Polygons.of(placement.outline());
        for (Path hole : placement.holes()) {
            shape = shape.difference(Polygons.of(hole));
        }
        return shape;
    }
}
