package org.capwright.fitup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Quantity;
import org.capwright.check.Verdict;
import org.capwright.fitup.Suggestion.Kind;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.part.Leaf;
import org.capwright.swing.LeafSize;
import org.capwright.swing.MeasuredWork;
import org.capwright.swing.RodLine;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Tries what a lead hand can do about the clearance that decides. */
final class Suggestions {
    private final FitUp fitUp;
    private final FitVerdict deciding;
    private final ShopFormat format;

    Suggestions(FitUp fitUp) {
        this.fitUp = fitUp;
        this.deciding = fitUp.deciding();
        this.format = Writing.of(fitUp.drawn()).format();
    }

    List<Suggestion> all(Vec2 shift, FitUp shifted, boolean worthShifting) {
        List<Suggestion> all = new ArrayList<>();
        if (deciding.verdict() == Verdict.CLEAR) {
            return all;
        }
        if (deciding.check().id().contains(".hood.")) {
            if (worthShifting) {
                all.add(tried(Kind.SHIFT, "shift the hood " + towards(shift), shifted));
            }
            round().ifPresent(all::add);
            all.add(dress());
        } else {
            shim().ifPresent(all::add);
        }
        all.addAll(new UncutParts(fitUp, deciding).all());
        return all;
    }

    private String towards(Vec2 shift) {
        List<String> ways = new ArrayList<>();
        if (Math.abs(shift.x()) > 0.1) {
            ways.add(length(Math.abs(shift.x())) + " towards " + (shift.x() > 0 ? "+x" : "-x"));
        }
        if (Math.abs(shift.y()) > 0.1) {
            ways.add(length(Math.abs(shift.y())) + " towards " + (shift.y() > 0 ? "+y" : "-y"));
        }
        return String.join(" and ", ways);
    }

    /** The hood pulled round, where it stands. */
    private Optional<Suggestion> round() {
        Oval hood = fitUp.work().hood();
        if (hood.ovalityMm() < 0.5) {
            return Optional.empty();
        }
        Suggestion pulled = tried(Kind.ROUND, "pull the hood round: it is " + length(hood.ovalityMm()) + " wide at "
                + format.angle(Angle.ofRad(hood.ovalityRad())) + " and as much narrow square to that",
                fitUp.with(fitUp.work().withHood(new Oval(hood.radiusMm(), 0, 0, hood.centre()))));
        return pulled.after() > pulled.before() ? Optional.of(pulled) : Optional.empty();
    }

    /** What the leaf's lip must lose at the place; tried on the whole curve of that leaf. */
    private Suggestion dress() {
        double need = needMm();
        Leaf leaf = fitUp.work().leaf(fitUp.made().leaves().get(number() - 1), deciding.side());
        double radius = leaf.slab().radiusMm() - need;
        Leaf.Slab slab = new Leaf.Slab(leaf.slab().hingeEdgeMm(), Math.min(leaf.slab().freeEdgeMm(), radius), radius);
        Check.Place place = deciding.check().place().orElseThrow();
        double azimuth = Math.toDegrees(Math.atan2(place.at().y(), place.at().x()));
        MeasuredWork dressed = fitUp.work().withLeaf(new LeafSize(number(), deciding.side(), slab));
        return tried(Kind.DRESS, "dress leaf " + number() + " (" + sideWord() + ") in by " + length(need)
                + " where it comes near the hood, at azimuth "
                + format.angle(Angle.ofDegrees(azimuth)), fitUp.with(dressed));
    }

    /** Both bushings of the rod raised by what is missing. */
    private Optional<Suggestion> shim() {
        double need = needMm();
        RodLine rod = fitUp.work().rod(fitUp.made(), fitUp.made().leaves().get(number() - 1), deciding.side());
        RodLine raised = new RodLine(rod.number(), rod.side(), rod.offsetPlusMm(), rod.offsetMinusMm(), rod.heightPlusMm() + need,
                rod.heightMinusMm() + need, rod.endMm());
        Suggestion shimmed = tried(Kind.SHIM, "shim both bushings of rod " + number() + " (" + sideWord() + ") up by "
                + length(need),
                fitUp.with(fitUp.work().withRod(raised)));
        return shimmed.verdict() == Verdict.CLEAR ? Optional.of(shimmed) : Optional.empty();
    }

    private double needMm() {
        return deciding.check().limit().band() - deciding.check().margin();
    }

    private int number() {
        return Integer.parseInt(deciding.check().id().split("\\.")[1]);
    }

    private String sideWord() {
        return deciding.side() > 0 ? "+x" : "-x";
    }

    private String length(double mm) {
        return Quantity.LENGTH.words(Length.ofMm(mm).mm(), format);
    }

    private Suggestion tried(Kind kind, String words, FitUp after) {
        return tried(kind, words, fitUp, deciding, after);
    }

    /** A suggestion with what became of the deciding clearance and of the others. */
    static Suggestion tried(Kind kind, String words, FitUp before, FitVerdict deciding, FitUp after) {
        Map<String, FitVerdict> then = new HashMap<>();
        after.verdicts().forEach(one -> then.put(one.check().id(), one));
        // where the hood decides, its least clearance anywhere counts, not that of one leaf
        double value = deciding.check().id().contains(".hood.") ? after.swing().leastToHood().leastMm()
                : then.get(deciding.check().id()).check().value();
        boolean spoils = before.verdicts().stream().anyMatch(one -> then.containsKey(one.check().id())
                && then.get(one.check().id()).verdict().compareTo(one.verdict()) < 0);
        return new Suggestion(kind, words, deciding.check().value(), value, deciding.check().limit().verdict(value), !spoils);
    }
}
