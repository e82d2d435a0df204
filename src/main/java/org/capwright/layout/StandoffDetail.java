package org.capwright.layout;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Standoff;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** One standoff from above, its web along x, with the walls it sits between. */
final class StandoffDetail {
    private static final double PAST_SHARE = 0.6;

    private StandoffDetail() {
    }

    /** Its profile from above: web's outside face on the x axis, origin on the stack's axis, flanges towards +y. */
    static Path bracket(Standoff standoff) {
        double corner = Math.hypot(standoff.sleeveOutsideMm(), standoff.innerFlangeMm() / 2);
        return Shapes.sheet(List.of(Vec2.polar(corner, 2 * standoff.innerHalfRad()), new Vec2(corner, 0),
                new Vec2(standoff.hoodInsideMm(), 0),
                Vec2.polar(standoff.hoodInsideMm(), 2 * standoff.outerHalfRad())), standoff.sheet().thicknessMm());
    }

    static View of(Cap cap, PartList parts, ShopFormat format) {
        Standoff standoff = cap.standoff();
        View.Builder view = new View.Builder("standoff, seen from above", "its web to the right of the stack's axis");
        view.add(LineKind.OUTLINE, bracket(standoff));
        wall(view, cap.sleeve().insideRadiusMm(), standoff);
        wall(view, cap.sleeve().outsideRadiusMm(), standoff);
        wall(view, cap.hood().insideRadiusMm(), standoff);
        wall(view, cap.hood().outsideRadiusMm(), standoff);
        double corner = Math.hypot(standoff.sleeveOutsideMm(), standoff.innerFlangeMm() / 2);
        view.below(corner, standoff.hoodInsideMm(), 0);
        Vec2 innerEnd = Vec2.polar(corner, 2 * standoff.innerHalfRad());
        Vec2 outerEnd = Vec2.polar(standoff.hoodInsideMm(), 2 * standoff.outerHalfRad());
        Vec2 rivet = outerEnd.plus(new Vec2(standoff.hoodInsideMm(), 0)).times(0.5);
        double low = -PAST_SHARE * standoff.innerFlangeMm();
        at(view, innerEnd, "inner flange " + length(format, standoff.innerFlangeMm()) + " outside, welded to the sleeve");
        at(view, outerEnd, "outer flange " + length(format, standoff.outerFlangeMm()) + " outside, riveted to the hood");
        at(view, new Vec2(corner, 0), "inner bend " + format.angle(Angle.ofRad(standoff.innerBend().turnRad())) + " from flat");
        at(view, new Vec2(standoff.hoodInsideMm(), 0), "outer bend " + format.angle(Angle.ofRad(standoff.outerBend().turnRad()))
                + " from flat");
        at(view, rivet, parts.words("blind rivet") + ": " + standoff.rivets().each() + " in each, middle of the flange");
        at(view, new Vec2((corner + standoff.hoodInsideMm()) / 2, standoff.sheet().thicknessMm() / 2), parts.words("standoff")
                + ": height "
                + length(format, standoff.heightMm()) + ", top " + length(format, -standoff.topZMm()) + " below the rim");
        at(view, onWall(cap.sleeve().insideRadiusMm(), low), parts.words("sleeve"));
        at(view, onWall(cap.hood().outsideRadiusMm(), low), parts.words("hood"));
        return view.build();
    }

    private static Vec2 onWall(double radius, double y) {
        return new Vec2(Math.sqrt(radius * radius - y * y), y);
    }

    private static void wall(View.Builder view, double radius, Standoff standoff) {
        double low = -PAST_SHARE * standoff.innerFlangeMm();
        double high = (1 + PAST_SHARE) * Math.max(standoff.innerFlangeMm(), standoff.outerFlangeMm());
        view.add(LineKind.OUTLINE, PathBuilder.from(onWall(radius, low)).arcTo(onWall(radius, high), Vec2.ZERO, true).open());
    }

    private static void at(View.Builder view, Vec2 p, String words) {
        view.note(p.x(), p.y(), words);
    }

    private static String length(ShopFormat format, double mm) {
        return format.length(Length.ofMm(mm));
    }
}
