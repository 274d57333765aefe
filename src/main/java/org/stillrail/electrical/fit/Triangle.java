package org.stillrail.electrical.fit;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.qr.QRDecompositionHouseholderColumn_DDRM;

/**
 * The triangular factor of a Householder QR decomposition, for least squares by back-substitution: with the right-hand
 * side as last column, its upper part becomes {@code Q' b}.
 *
 * <p>Takes the columns as they are, without the copy that a row-major matrix would need; they are overwritten.
 */
final class Triangle extends QRDecompositionHouseholderColumn_DDRM {

    /** A pivot this small beside its column's norm has no information; its unknown is set to 0. */
    private static final double NO_PIVOT = 1e-14;

    private final double[] columnNorm;

    private Triangle(double[][] columns) {
        dataQR = columns;
        numCols = columns.length;
        numRows = columns[0].length;
        minLength = Math.min(numRows, numCols);
        v = new double[Math.max(numRows, numCols)];
        gammas = new double[minLength];
        columnNorm = new double[numCols];
        for (int k = 0; k < numCols; k++) {
            columnNorm[k] = norm(columns[k]);
        }
        for (int j = 0; j < minLength; j++) {
            householder(j);
            updateA(j);
        }
    }

    /**
     * @param columns as many rows as columns or more, overwritten
     */
    static Triangle of(double[][] columns) {
        return new Triangle(columns);
    }

    private static double norm(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return Math.sqrt(sum);
    }

    /** Element of R; row at most column. */
    double r(int row, int column) {
        return dataQR[column][row];
    }

    /** Least-squares solution of the columns {@code from .. to - 1} for the column {@code rhs}, all of them behind {@code from} rows. */
    double[] solve(int from, int to, int rhs) {
        double[] x = new double[to - from];
        for (int i = to - 1; i >= from; i--) {
            double sum = r(i, rhs);
            for (int k = i + 1; k < to; k++) {
                sum -= r(i, k) * x[k - from];
            }
            x[i - from] = informs(i) ? sum / r(i, i) : 0;
        }
        return x;
    }

    /** {@code R x = u} for the first {@code u.length} columns. */
    double[] backward(double[] u) {
        double[] x = new double[u.length];
        for (int i = u.length - 1; i >= 0; i--) {
            double sum = u[i];
            for (int k = i + 1; k < u.length; k++) {
                sum -= r(i, k) * x[k];
            }
            x[i] = informs(i) ? sum / r(i, i) : 0;
        }
        return x;
    }

    /** {@code R' z = g} for the first {@code g.length} columns. */
    double[] forward(double[] g) {
        double[] z = new double[g.length];
        for (int i = 0; i < g.length; i++) {
            double sum = g[i];
            for (int k = 0; k < i; k++) {
                sum -= r(k, i) * z[k];
            }
            z[i] = informs(i) ? sum / r(i, i) : 0;
        }
        return z;
    }

    private boolean informs(int pivot) {
        return Math.abs(r(pivot, pivot)) > NO_PIVOT * columnNorm[pivot];
    }

    @Override
    public boolean decompose(DMatrixRMaj matrix) {
        throw new UnsupportedOperationException("Decomposed when made");
    }
}
