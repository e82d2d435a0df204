package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.check.Check;
import org.capwright.check.Quantity;
import org.capwright.check.SwingLimits;
import org.capwright.geom.Vec2;
import org.capwright.job.CapJob;
import org.capwright.job.FitInputs;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.swing.Clearance;
import org.capwright.swing.MeasuredSwing;
import org.capwright.swing.Pair;

/** Judges every clearance of the measured swing, and says how uncertain it is. */
final class FitVerdicts {
    private final Cap made;
    private final CapJob job;
    private final OvalFit hood;

    private FitVerdicts(Cap made, OvalFit hood) {
        this.made = made;
        this.job = made.job();
        this.hood = hood;
    }

    static List<FitVerdict> of(Cap made, MeasuredSwing swing, OvalFit hood) {
        FitVerdicts verdicts = new FitVerdicts(made, hood);
        List<FitVerdict> all = new ArrayList<>();
        for (MeasuredSwing.OneSide side : swing.sides()) {
            for (Pair pair : Pair.values()) {
                for (Leaf leaf : made.leaves()) {
                    side.clearances().stream().filter(one -> one.pair() == pair && one.number() == leaf.number())
                            .min((a, b) -> Double.compare(a.leastMm(), b.leastMm())).ifPresent(one -> all.add(verdicts.one(one,
                            side.side())));
                }
            }
        }
        return all;
    }

    private FitVerdict one(Clearance one, int side) {
        String id = SwingLimits.id(one.pair(), one.number()) + (side > 0 ? ".plus" : ".minus");
        String words = SwingLimits.words(one.pair(), one.number()) + (side > 0 ? ", +x side," : ", -x side,");
        Check check = new Check(id, words, Quantity.LENGTH, one.leastMm(), SwingLimits.of(job, one.pair()),
                Optional.of(new Check.Place(one.where(), one.openRad())), false);
        return new FitVerdict(check, side, uncertaintyMm(one));
    }

    /**
     * Twice the standard deviation of the clearance: the outline's at the place, and that of leaf, rod and gutter readings, each
     * of which moves a clearance by no more than itself.
     */
    private double uncertaintyMm(Clearance one) {
        double variance = one.pair() == Pair.LEAF_HOOD ? square(hood.deviationMm(new Vec2(one.where().x(), one.where().y()))) : 0;
        double own = square(job.get(FitInputs.ACCURACY).mm() / 2);
        if (measured(FitInputs.LEAVES) || measured(FitInputs.COVERS)) {
            variance += own;
        }
        if (measured(FitInputs.RODS)) {
            variance += own;
        }
        if (measured(FitInputs.GUTTERS) && (one.pair() == Pair.HEEL_WALL || one.pair() == Pair.HEEL_FLOOR)) {
            variance += own;
        }
        return 2 * Math.sqrt(variance);
    }

    private boolean measured(String list) {
        return made.job().text().listSize(list) > 0;
    }

    private static double square(double value) {
        return value * value;
    }
}
