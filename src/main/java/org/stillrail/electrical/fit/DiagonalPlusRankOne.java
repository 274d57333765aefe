package org.stillrail.electrical.fit;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Eigenvalues of {@code D + factor b c'}, D block diagonal: {@code [alpha]} where beta is 0, else
 * {@code [[alpha, beta], [-beta, alpha]]}. Blocks should come largest first. Each block is scaled by a similarity so that
 * its shares of b and c weigh alike; with poles over many decades the small eigenvalues would drown otherwise.
 */
final class DiagonalPlusRankOne {

    private DiagonalPlusRankOne() {
    }

    /** @return real eigenvalues and the upper one of each pair as {re, im}; empty when the iteration fails */
    static List<double[]> upperEigenvalues(double[] alpha, double[] beta, double[] b, double[] c, double factor) {
        int size = b.length;
        double[] left = b.clone();
        double[] right = c.clone();
        DMatrixRMaj matrix = new DMatrixRMaj(size, size);
        int row = 0;
        for (int k = 0; k < alpha.length; k++) {
            boolean pair = beta[k] != 0;
            matrix.set(row, row, alpha[k]);
            if (pair) {
                matrix.set(row + 1, row + 1, alpha[k]);
                matrix.set(row, row + 1, beta[k]);
                matrix.set(row + 1, row, -beta[k]);
            }
            int end = row + (pair ? 2 : 1);
            scale(left, right, row, end);
            row = end;
        }
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < size; k++) {
                double entry = matrix.get(i, k) + factor * left[i] * right[k];
                if (!Double.isFinite(entry)) {
                    return List.of();
                }
                matrix.set(i, k, entry);
            }
        }
        return upperEigenvalues(matrix);
    }

    private static void scale(double[] b, double[] c, int from, int to) {
        double sizeB = 0;
        double sizeC = 0;
        for (int i = from; i < to; i++) {
            sizeB = Math.max(sizeB, Math.abs(b[i]));
            sizeC = Math.max(sizeC, Math.abs(c[i]));
        }
        if (sizeB > 0 && sizeC > 0) {
            double scale = Math.sqrt(sizeC / sizeB);
            for (int i = from; i < to; i++) {
                b[i] *= scale;
                c[i] /= scale;
            }
        }
    }

    private static List<double[]> upperEigenvalues(DMatrixRMaj matrix) {
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(matrix.numRows, false);
        if (!eigen.decompose(matrix)) {
            return List.of();
        }
        List<double[]> values = new ArrayList<>(matrix.numRows);
        for (int k = 0; k < matrix.numRows; k++) {
            Complex_F64 value = eigen.getEigenvalue(k);
            if (value.imaginary >= 0) {
                values.add(new double[] {value.real, value.imaginary});
            }
        }
        return values;
    }
}
