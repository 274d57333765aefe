package org.stillrail.electrical.step;

import java.util.stream.IntStream;

/** A linear form over the state vector: {@code sum of weight[k] * z[k]}. */
final class Row {

    private final double[] weights;
    private int[] used;

    private Row(double[] weights) {
        this.weights = weights;
    }

    static Row zero(int n) {
        return new Row(new double[n]);
    }

    static Row unit(int n, int index) {
        double[] weights = new double[n];
        weights[index] = 1;
        return new Row(weights);
    }

    Row plus(double factor, Row other) {
        double[] sum = weights.clone();
        for (int k = 0; k < sum.length; k++) {
            sum[k] += factor * other.weights[k];
        }
        return new Row(sum);
    }

    Row plus(Row other) {
        return plus(1, other);
    }

    Row minus(Row other) {
        return plus(-1, other);
    }

    Row times(double factor) {
        return zero(weights.length).plus(factor, this);
    }

    Row over(double divisor) {
        double[] quotient = weights.clone();
        for (int k = 0; k < quotient.length; k++) {
            quotient[k] /= divisor;
        }
        return new Row(quotient);
    }

    double weight(int index) {
        return weights[index];
    }

    double of(double[] z) {
        double sum = 0;
        for (int k : used()) {
            sum += weights[k] * z[k];
        }
        return sum;
    }

    /** Most forms look at few states, and a step asks them often. */
    private int[] used() {
        if (used == null) {
            used = IntStream.range(0, weights.length).filter(k -> weights[k] != 0).toArray();
        }
        return used;
    }

    /** The form's rate of change, where the states move by {@code rates}. */
    Row rate(Row[] rates) {
        Row sum = zero(weights.length);
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] != 0) {
                sum = sum.plus(weights[k], rates[k]);
            }
        }
        return sum;
    }

    static double[] matrix(Row[] rows) {
        int n = rows.length;
        double[] matrix = new double[n * n];
        for (int row = 0; row < n; row++) {
            System.arraycopy(rows[row].weights, 0, matrix, row * n, n);
        }
        return matrix;
    }
}
