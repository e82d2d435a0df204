package org.capwright.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.ejml.data.DMatrixRMaj;

/**
 * An outline fitted to readings, with what is left of each. A reading that disagrees with the rest is pointed out; it stays in
 * the fit.
 *
 * @param outline the outline fitted to all readings
 * @param terms what the readings tell; the rest is as it was drawn
 * @param residuals what is left of each reading
 * @param scatterMm root mean square of the residuals
 * @param freedom readings beyond those that the terms need
 * @param scale what the readings' stated accuracies must be multiplied by to explain the residuals; at least 1
 * @param covarianceMm2 of R, x, y, A, B, row by row, from the accuracies and that scale
 * @param withoutSuspects the same fitted without the suspect readings, where there are any
 */
public record OvalFit(Oval outline, Terms terms, List<Residual> residuals, double scatterMm, int freedom, double scale,
                      List<Double> covarianceMm2, Optional<OvalFit> withoutSuspects) {
    /** Beyond so many standard deviations a reading is suspect: once in 16 000 by chance. */
    private static final double SUSPECT_SCORE = 4;

    /** Keeps its own copies. */
    public OvalFit {
        residuals = List.copyOf(residuals);
        covarianceMm2 = List.copyOf(covarianceMm2);
    }

    /**
     * Fits an outline.
     *
     * @param readings the readings, any number
     * @param drawn the outline as drawn, which holds for what the readings do not tell
     * @return the fit
     */
    public static OvalFit of(List<Reading> readings, Oval drawn) {
        return of(readings, drawn, true);
    }

    /**
     * Fits an outline, or a circle only.
     *
     * @param readings the readings, any number
     * @param drawn the outline as drawn
     * @param withOvality whether to fit the ovality
     * @return the fit
     */
    public static OvalFit of(List<Reading> readings, Oval drawn, boolean withOvality) {
        List<Residual> suspects = Suspects.of(readings, drawn, withOvality);
        OvalFit all = fit(readings, drawn, withOvality, suspects, Optional.empty());
        if (suspects.isEmpty()) {
            return all;
        }
        List<Reading> rest = new ArrayList<>(readings);
        suspects.forEach(one -> rest.remove(one.reading()));
        return fit(readings, drawn, withOvality, suspects, Optional.of(fit(rest, drawn, withOvality, List.of(),
                Optional.empty())));
    }

    private static OvalFit fit(List<Reading> readings, Oval drawn, boolean withOvality, List<Residual> suspects,
            Optional<OvalFit> without) {
        Solution solution = Solution.of(readings, drawn, withOvality);
        int freedom = readings.size() - solution.terms().count();
        double scale = freedom > 0 ? Math.max(1, Math.sqrt(solution.chiSquare() / freedom)) : 1;
        List<Residual> residuals = new ArrayList<>();
        double square = 0;
        for (Reading reading : readings) {
            double mm = reading.residualMm(solution.outline());
            square += mm * mm;
            residuals.add(suspects.stream().filter(one -> one.reading().equals(reading)).findFirst()
                    .map(one -> new Residual(reading, mm, one.withoutMm(), one.score(), true))
                    .orElseGet(() -> Suspects.against(readings, reading, drawn, withOvality, mm)));
        }
        List<Double> covariance = new ArrayList<>();
        DMatrixRMaj matrix = solution.covariance();
        for (int i = 0; i < matrix.getNumElements(); i++) {
            covariance.add(matrix.get(i) * scale * scale);
        }
        double scatter = readings.isEmpty() ? 0 : Math.sqrt(square / readings.size());
        return new OvalFit(solution.outline(), solution.terms(), residuals, scatter, freedom, scale, covariance, without);
    }

    /**
     * The readings that disagree with the rest.
     *
     * @return the worst first
     */
    public List<Residual> suspects() {
        return residuals.stream().filter(Residual::suspect)
                .sorted(Comparator.comparingDouble((Residual one) -> -Math.abs(one.score()))).toList();
    }

    /**
     * Standard deviation of the outline's place, seen from its centre, at an azimuth: from the covariance by
     * {@code g C g} with {@code g = (1, cos phi, sin phi, cos 2 phi, sin 2 phi)}.
     *
     * @param point the point it is asked for
     * @return mm; leaves out what the readings do not tell
     */
    public double deviationMm(Vec2 point) {
        double phi = point.minus(outline.centre()).direction();
        double[] g = {1, Math.cos(phi), Math.sin(phi), Math.cos(2 * phi), Math.sin(2 * phi)};
        double sum = 0;
        for (int i = 0; i < g.length; i++) {
            for (int j = 0; j < g.length; j++) {
                sum += g[i] * covarianceMm2.get(i * g.length + j) * g[j];
            }
        }
        return Math.sqrt(Math.max(0, sum));
    }

    static boolean suspect(double score, Residual residual) {
        return Math.abs(score) > SUSPECT_SCORE && Math.abs(residual.withoutMm()) > 2 * residual.reading().accuracyMm();
    }
}
