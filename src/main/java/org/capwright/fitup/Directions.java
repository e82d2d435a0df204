package org.capwright.fitup;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * The directions among R, x, y, A, B that readings tell: first the size, then the place, then the ovality, each only as far as the
 * readings tell it apart from what came before.
 *
 * @param basis a column for each direction, of unit length
 * @param terms how many of each kind
 */
record Directions(DMatrixRMaj basis, Terms terms) {
    /** A direction whose effect is less than this share of what it would be by itself cannot be told from the others. */
    private static final double TOLD_APART = 0.05;

    static Directions of(DMatrixRMaj jacobian, boolean withOvality) {
        Directions found = new Directions(new DMatrixRMaj(5, 0), new Terms(false, 0, 0)).with(jacobian, 0, 1).with(jacobian, 1,
                2);
        return withOvality ? found.with(jacobian, 3, 2) : found;
    }

    /** Adds what the readings tell about one to two parameters. */
    private Directions with(DMatrixRMaj jacobian, int first, int count) {
        if (jacobian.numRows == 0) {
            return this;
        }
        DMatrixRMaj block = CommonOps_DDRM.extract(jacobian, 0, jacobian.numRows, first, first + count);
        double byItself = largest(block);
        if (byItself == 0) {
            return this;
        }
        SingularValueDecomposition_F64<DMatrixRMaj> parts = decompose(beyond(jacobian, block));
        double[] sizes = parts.getSingularValues();
        int rank = parts.numberOfSingularValues();
        DMatrixRMaj turned = parts.getV(null, true);
        SingularOps_DDRM.descendingOrder(parts.getU(null, false), false, sizes, rank, turned, true);
        Directions all = this;
        for (int i = 0; i < rank; i++) {
            if (sizes[i] > TOLD_APART * byItself && all.basis.numCols < jacobian.numRows) {
                all = all.and(turned, i, first);
            }
        }
        return all;
    }

    private Directions and(DMatrixRMaj turned, int row, int first) {
        DMatrixRMaj wider = new DMatrixRMaj(5, basis.numCols + 1);
        CommonOps_DDRM.insert(basis, wider, 0, 0);
        for (int j = 0; j < turned.numCols; j++) {
            wider.set(first + j, basis.numCols, turned.get(row, j));
        }
        Terms more = first == 0 ? new Terms(true, terms.shift(), terms.ovality())
                : first == 1 ? new Terms(terms.radius(), terms.shift() + 1, terms.ovality())
                : new Terms(terms.radius(), terms.shift(), terms.ovality() + 1);
        return new Directions(wider, more);
    }

    /** A block of columns less what the directions so far explain of it. */
    private DMatrixRMaj beyond(DMatrixRMaj jacobian, DMatrixRMaj block) {
        if (basis.numCols == 0) {
            return block;
        }
        DMatrixRMaj known = new DMatrixRMaj(jacobian.numRows, basis.numCols);
        CommonOps_DDRM.mult(jacobian, basis, known);
        DMatrixRMaj span = decompose(known).getU(null, false);
        DMatrixRMaj within = new DMatrixRMaj(span.numCols, block.numCols);
        CommonOps_DDRM.multTransA(span, block, within);
        DMatrixRMaj rest = block.copy();
        CommonOps_DDRM.multAdd(-1, span, within, rest);
        return rest;
    }

    private static double largest(DMatrixRMaj block) {
        double largest = 0;
        for (int j = 0; j < block.numCols; j++) {
            DMatrixRMaj column = CommonOps_DDRM.extractColumn(block, j, null);
            largest = Math.max(largest, Math.sqrt(CommonOps_DDRM.dot(column, column)));
        }
        return largest;
    }

    private static SingularValueDecomposition_F64<DMatrixRMaj> decompose(DMatrixRMaj matrix) {
        SingularValueDecomposition_F64<DMatrixRMaj> parts = DecompositionFactory_DDRM.svd(matrix.numRows, matrix.numCols, true,
                true, true);
        if (!parts.decompose(matrix.copy())) {
            throw new IllegalStateException("the singular values of the readings were not found");
        }
        return parts;
    }
}
