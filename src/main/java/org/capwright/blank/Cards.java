package org.capwright.blank;

import java.util.ArrayList;
import java.util.List;
import org.capwright.metal.Bend;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.part.Shrink;
import org.capwright.part.Sleeve;
import org.capwright.part.Standoff;
import org.capwright.units.Angle;

/** The gauges of a cap: every bend that is not square, the passes of the drip flange, the rim, the lip, the stop. */
public final class Cards {
    /** What holds for all of them. */
    public static final String ADVICE = "glue on card or thin sheet, cut along the full lines; bends of 90 deg need no card";
    private static final double LEG_MM = 70;
    private static final double SHORT_LEG_MM = 45;
    /** A leg inside a bracket must end short of the other flange. */
    private static final double WEB_SHARE = 0.8;
    private static final double LEAST_FREE_LEG_MM = 30;
    private static final double SQUARE_RAD = Math.toRadians(0.05);

    private final Cap cap;
    private final Writing writing;
    private final List<Card> cards = new ArrayList<>();

    private Cards(Cap cap) {
        this.cap = cap;
        this.writing = Writing.of(cap);
    }

    /**
     * The cards of a cap.
     *
     * @param cap the cap
     * @return in the order of the work
     */
    public static List<Card> of(Cap cap) {
        Cards cards = new Cards(cap);
        cards.standoff();
        cards.passes();
        cards.rim();
        cards.lip();
        cards.stop();
        return List.copyOf(cards.cards);
    }

    private void standoff() {
        Standoff standoff = cap.standoff();
        double web = Math.min(LEG_MM, WEB_SHARE * standoff.webMm());
        bend("standoff, inner bend", standoff.innerBend(), web, Math.max(LEAST_FREE_LEG_MM, standoff.innerFlangeMm()), "web",
                "to sleeve");
        bend("standoff, outer bend", standoff.outerBend(), web, Math.max(LEAST_FREE_LEG_MM, standoff.outerFlangeMm()), "web",
                "to hood");
    }

    /** All leaves are bent alike. */
    private void passes() {
        Leaf leaf = cap.leaves().get(0);
        List<Shrink.Pass> passes = leaf.shrink().passes();
        for (int i = 0; i < passes.size(); i++) {
            Bend bend = new Bend(passes.get(i).turnRad(), leaf.bend().insideRadiusMm(), leaf.bend().thicknessMm(), leaf.bend()
                    .neutralFactor());
            bend("drip flange, pass " + (i + 1) + " of " + passes.size(), bend, LEG_MM, SHORT_LEG_MM, "leaf", "flange");
        }
    }

    /**
     * Whether a bend gets a card.
     *
     * @param turnRad its turn from flat
     * @return false where any square does
     */
    public static boolean needed(double turnRad) {
        return Math.abs(turnRad - Math.PI / 2) >= SQUARE_RAD;
    }

    private void bend(String name, Bend bend, double firstMm, double secondMm, String first, String second) {
        double between = Math.PI - bend.turnRad();
        if (!needed(bend.turnRad())) {
            return;
        }
        double radius = bend.insideRadiusMm() + bend.thicknessMm();
        cards.add(new Card("angle card: " + name, List.of("turned " + angle(bend.turnRad()) + " from flat,", angle(between)
                + " between the legs"), AngleCard.of(name, between, firstMm, secondMm, radius, first, second)));
    }

    private void rim() {
        Sleeve sleeve = cap.sleeve();
        arc("rim card: sleeve", sleeve.insideRadiusMm(), sleeve.outsideRadiusMm());
    }

    private void lip() {
        Leaf leaf = cap.leaves().get(0);
        double lip = leaf.slab().radiusMm() + leaf.lipOutMm(leaf.curveFlangeMm());
        arc("lip card: curved flange of the leaves, at the lip", lip - leaf.sheet()
                .thicknessMm() * Math.sin(leaf.bend().turnRad()), lip);
    }

    private void arc(String name, double insideMm, double outsideMm) {
        cards.add(new Card(name, List.of("inside radius " + writing.length(insideMm) + ", outside radius "
                + writing.length(outsideMm),
                "cut the wall's band out; slide each part along the edge: no light under it"),
                        ArcCard.of(name, insideMm, outsideMm)));
    }

    private void stop() {
        cards.add(new Card("stop card: leaves open to " + angle(cap.stopRad()),
                List.of("wedge: lower leg level, outboard of the leaf,",
                "other leg on the leaf's underside"), AngleCard.of("stop", cap.stopRad(), LEG_MM, LEG_MM, 0, "level", "leaf")));
    }

    private String angle(double rad) {
        return writing.format().angle(Angle.ofRad(rad));
    }
}
