package org.capwright.fitup;

import java.util.List;
import java.util.Optional;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The outline that leaves the least weighted sum of squared residuals, by Gauss and Newton, in the directions that the readings
 * tell (Gander, Golub, Strebel, "Least-Squares Fitting of Circles and Ellipses", BIT 34, 1994, for the circle).
 *
 * @param outline the outline
 * @param terms what it rests on
 * @param covariance of R, x, y, A, B in mm2, from the readings' accuracies; 0 where nothing is known
 * @param chiSquare sum of squared residuals over their variances
 */
record Solution(Oval outline, Terms terms, DMatrixRMaj covariance, double chiSquare) {
    private static final int MOST_STEPS = 100;
    private static final double ENOUGH_MM = 1e-10;
    private static final double STEP_MM = 1e-3;

    /** Fits the readings, starting from an outline; terms that they do not tell keep the start's values. */
    static Solution of(List<Reading> readings, Oval start, boolean withOvality) {
        DMatrixRMaj jacobian = jacobian(readings, start);
        Directions directions = Directions.of(jacobian, withOvality);
        if (directions.terms().count() == 0) {
            return new Solution(start, directions.terms(), new DMatrixRMaj(5, 5), 0);
        }
        Oval best = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            Optional<Oval> better = step(readings, best, directions.basis());
            if (better.isEmpty()) {
                break;
            }
            best = better.get();
        }
        return new Solution(best, directions.terms(), covariance(jacobian(readings, best), directions.basis()),
                chiSquare(readings, best));
    }

    /** What readings tell, without fitting them. */
    static Terms termsOf(List<Reading> readings, Oval start, boolean withOvality) {
        return Directions.of(jacobian(readings, start), withOvality).terms();
    }

    /** One step, halved until it makes the sum smaller; empty where it is too short to matter. */
    private static Optional<Oval> step(List<Reading> readings, Oval from, DMatrixRMaj basis) {
        DMatrixRMaj reduced = times(jacobian(readings, from), basis);
        DMatrixRMaj right = new DMatrixRMaj(readings.size(), 1);
        for (int i = 0; i < readings.size(); i++) {
            right.set(i, 0, readings.get(i).residualMm(from) / readings.get(i).deviationMm());
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.leastSquares(reduced.numRows, reduced.numCols);
        DMatrixRMaj found = new DMatrixRMaj(reduced.numCols, 1);
        if (!solver.setA(reduced.copy())) {
            return Optional.empty();
        }
        solver.solve(right, found);
        DMatrixRMaj change = times(basis, found);
        double now = chiSquare(readings, from);
        for (double share = 1; share > 1e-6; share /= 2) {
            Oval to = plus(from, change, share);
            if (chiSquare(readings, to) < now) {
                return share * length(change) < ENOUGH_MM ? Optional.empty() : Optional.of(to);
            }
        }
        return Optional.empty();
    }

    private static double chiSquare(List<Reading> readings, Oval outline) {
        double sum = 0;
        for (Reading reading : readings) {
            double score = reading.residualMm(outline) / reading.deviationMm();
            sum += score * score;
        }
        return sum;
    }

    /** How each reading, over its deviation, follows R, x, y, A and B; by central differences. */
    private static DMatrixRMaj jacobian(List<Reading> readings, Oval at) {
        DMatrixRMaj jacobian = new DMatrixRMaj(readings.size(), 5);
        for (int j = 0; j < 5; j++) {
            DMatrixRMaj unit = new DMatrixRMaj(5, 1);
            unit.set(j, 0, STEP_MM);
            Oval up = plus(at, unit, 1);
            Oval down = plus(at, unit, -1);
            for (int i = 0; i < readings.size(); i++) {
                Reading reading = readings.get(i);
                jacobian.set(i, j, (reading.residualMm(down) - reading.residualMm(up)) / (2 * STEP_MM * reading.deviationMm()));
            }
        }
        return jacobian;
    }

    private static DMatrixRMaj covariance(DMatrixRMaj jacobian, DMatrixRMaj basis) {
        DMatrixRMaj reduced = times(jacobian, basis);
        DMatrixRMaj square = new DMatrixRMaj(reduced.numCols, reduced.numCols);
        CommonOps_DDRM.multTransA(reduced, reduced, square);
        CommonOps_DDRM.invert(square);
        DMatrixRMaj covariance = new DMatrixRMaj(5, 5);
        CommonOps_DDRM.multTransB(times(basis, square), basis, covariance);
        return covariance;
    }

    private static Oval plus(Oval oval, DMatrixRMaj change, double share) {
        return new Oval(oval.radiusMm() + share * change.get(0), oval.cosMm() + share * change.get(3), oval.sinMm()
                + share * change.get(4),
                new Vec2(oval.centre().x() + share * change.get(1), oval.centre().y() + share * change.get(2)));
    }

    private static double length(DMatrixRMaj vector) {
        return Math.sqrt(CommonOps_DDRM.dot(vector, vector));
    }

    private static DMatrixRMaj times(DMatrixRMaj a, DMatrixRMaj b) {
        DMatrixRMaj product = new DMatrixRMaj(a.numRows, b.numCols);
        CommonOps_DDRM.mult(a, b, product);
        return product;
    }

    /** How well a reading is foretold: variance of the outline at the reading, in units of the reading's own variance. */
    double leverage(Reading reading) {
        DMatrixRMaj row = jacobian(List.of(reading), outline);
        return CommonOps_DDRM.dot(row, transposed(times(row, covariance)));
    }

    private static DMatrixRMaj transposed(DMatrixRMaj row) {
        return CommonOps_DDRM.transpose(row, (DMatrixRMaj) null);
    }
}
