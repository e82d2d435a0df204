package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.drawing.Layer;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;

/** Gauges measured on their drawn lines. */
class CardsTest {
    private final List<Card> cards = Cards.of(Cap.solve(Jobs.kiln()));

    /** Trade handbook, section 8: bends 86.860 and 92.578 deg from flat, so 93.140 and 87.422 between the legs. */
    @Test
    void standoffBends() {
        assertThat(betweenDeg(card("angle card: standoff, inner"))).isCloseTo(180 - 86.860, within(0.001));
        assertThat(betweenDeg(card("angle card: standoff, outer"))).isCloseTo(180 - 92.578, within(0.001));
    }

    /** Three passes, 30, 60 and 90 deg: the last is square and needs no card. */
    @Test
    void passes() {
        assertThat(betweenDeg(card("angle card: drip flange, pass 1"))).isCloseTo(150, within(1e-9));
        assertThat(betweenDeg(card("angle card: drip flange, pass 2"))).isCloseTo(120, within(1e-9));
        assertThat(cards).noneMatch(card -> card.name().contains("pass 3"));
        List<Card> open = Cards.of(Cap.solve(Jobs.kilnWith(Map.of("leaves.flangeAngle", "60 deg", "gutter.insideWidth", "auto",
                "gutter.depth", "auto"))));
        assertThat(open).anyMatch(card -> card.name().contains("pass 3") && Math.abs(betweenDeg(card) - 120) < 1e-9);
    }

    @Test
    void stop() {
        assertThat(betweenDeg(card("stop card"))).isCloseTo(85, within(1e-9));
    }

    /** Worked figures of the handbook: sleeve 9.0625 and 9.1141, leaf radius 9.6537, its metal .0396. */
    @Test
    void radii() {
        assertThat(radii(card("rim card"))).satisfiesExactly(r -> assertThat(r / 25.4).isCloseTo(9.0625, within(0.0001)),
                r -> assertThat(r / 25.4).isCloseTo(9.1141, within(0.0001)));
        assertThat(radii(card("lip card"))).satisfiesExactly(r -> assertThat(r / 25.4).isCloseTo(9.6537 - 0.0396, within(0.0001)),
                r -> assertThat(r / 25.4).isCloseTo(9.6537, within(0.0001)));
    }

    private Card card(String beginning) {
        return cards.stream().filter(card -> card.name().startsWith(beginning)).findFirst().orElseThrow();
    }

    /** The two open cut lines from the vertex. */
    private static double betweenDeg(Card card) {
        List<Vec2> legs = card.drawing().paths(Layer.CUT).stream().filter(path -> !path.closed())
                .map(path -> path.segments().get(0).to().minus(path.segments().get(0).from())).toList();
        assertThat(legs).hasSize(2);
        return Math.toDegrees(Math.acos(legs.get(0).dot(legs.get(1)) / legs.get(0).norm() / legs.get(1).norm()));
    }

    private static List<Double> radii(Card card) {
        return card.drawing().paths(Layer.CUT).stream().map(Path::segments).map(segments -> segments.get(0))
                .filter(Segment.Arc.class::isInstance).map(segment -> ((Segment.Arc) segment).radius()).toList();
    }
}
