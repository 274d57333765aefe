package org.stillrail.electrical.spread;

import java.util.Arrays;

/** How one figure is spread over many random banks. */
public final class FigureSpread {

    private final DrawnFigure figure;
    private final double nominal;
    private final double[] sorted;

    /** @param values copied */
    FigureSpread(DrawnFigure figure, double nominal, double[] values) {
        this.figure = figure;
        this.nominal = nominal;
        this.sorted = values.clone();
        Arrays.sort(sorted);
    }

    public DrawnFigure figure() {
        return figure;
    }

    /** The figure where nothing strays. */
    public double nominal() {
        return nominal;
    }

    public int runs() {
        return sorted.length;
    }

    public double least() {
        return sorted[0];
    }

    public double most() {
        return sorted[sorted.length - 1];
    }

    public double mean() {
        return Arrays.stream(sorted).sum() / sorted.length;
    }

    /** Standard deviation of the sample; 0 of a single one. */
    public double sigma() {
        double mean = mean();
        double squares = Arrays.stream(sorted).map(value -> (value - mean) * (value - mean)).sum();
        return sorted.length == 1 ? 0 : Math.sqrt(squares / (sorted.length - 1));
    }

    /** @param probability above 0 and below 1 */
    public Quantile quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must be above 0 and below 1, not " + probability);
        }
        return Quantile.of(sorted, probability);
    }

    /** Counts in equal bins from {@link #least} to {@link #most}, for drawing. */
    public int[] histogram(int bins) {
        if (bins < 1) {
            throw new IllegalArgumentException("bins must be 1 or more, not " + bins);
        }
        int[] counts = new int[bins];
        double width = (most() - least()) / bins;
        for (double value : sorted) {
            counts[width == 0 ? 0 : Math.min(bins - 1, (int) ((value - least()) / width))]++;
        }
        return counts;
    }

    /** Ascending, a copy. */
    public double[] values() {
        return sorted.clone();
    }
}
