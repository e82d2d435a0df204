package org.capwright.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Oval;

/**
 * Finds readings that disagree with the rest: each is compared with the fit to all the others (its deleted residual), over the
 * standard deviation of both. The worst is set aside and the others are looked at again. At most a third of the readings can
 * disagree with the rest.
 */
final class Suspects {
    private Suspects() {
    }

    static List<Residual> of(List<Reading> readings, Oval drawn, boolean withOvality) {
        List<Residual> suspects = new ArrayList<>();
        List<Reading> left = new ArrayList<>(readings);
        for (int i = 0; i < readings.size() / 3; i++) {
            Optional<Residual> worst = worst(left, drawn, withOvality);
            if (worst.isEmpty()) {
                break;
            }
            suspects.add(worst.get());
            left.remove(worst.get().reading());
        }
        return suspects;
    }

    private static Optional<Residual> worst(List<Reading> readings, Oval drawn, boolean withOvality) {
        return readings.stream().map(reading -> against(readings, reading, drawn, withOvality, Double.NaN))
                .filter(one -> OvalFit.suspect(one.score(), one)).max(Comparator.comparingDouble(one -> Math.abs(one.score())));
    }

    /**
     * A reading against the fit to all the others. The others must tell the same terms and have a reading to spare, or else any
     * of them could be the wrong one.
     */
    static Residual against(List<Reading> readings, Reading reading, Oval drawn, boolean withOvality, double mm) {
        List<Reading> others = new ArrayList<>(readings);
        others.remove(reading);
        Solution without = Solution.of(others, drawn, withOvality);
        int freedom = others.size() - without.terms().count();
        boolean same = without.terms().equals(Solution.termsOf(readings, drawn, withOvality));
        if (freedom < 1 || !same) {
            return new Residual(reading, mm, Double.NaN, Double.NaN, false);
        }
        double scale = Math.max(1, without.chiSquare() / freedom);
        double off = reading.residualMm(without.outline());
        double score = off / reading.deviationMm() / Math.sqrt(scale * (1 + without.leverage(reading)));
        return new Residual(reading, mm, off, score, false);
    }
}
