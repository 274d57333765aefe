package org.stillrail.electrical.spread;

/**
 * A quantile of a sample with two of its members that bracket the true one with 95 % confidence, whatever the distribution: the
 * ranks are the 2.5 % and 97.5 % points of the binomial distribution (the upper one plus 1).
 *
 * @param probability of a value below it
 * @param value       of the sample
 * @param least       member of rank {@code leastRank}; null where the sample is too small for a bracket on that side
 * @param most        member of rank {@code mostRank}; null likewise
 * @param leastRank   from 1
 * @param mostRank    from 1
 * @param coverage    true probability of the bracket, about 0.95
 */
public record Quantile(double probability, double value, Double least, Double most, int leastRank, int mostRank, double coverage) {

    private static final double TAIL = 0.025;

    /** @param sorted ascending, at least one */
    static Quantile of(double[] sorted, double probability) {
        int n = sorted.length;
        int low = point(TAIL, n, probability);
        int high = point(1 - TAIL, n, probability) + 1;
        double coverage = BetaFunction.binomialAtMost(high - 1, n, probability) - BetaFunction.binomialAtMost(low - 1, n, probability);
        int rank = Math.min(n - 1, (int) Math.floor(probability * n));
        Double least = low < 1 ? null : (Double) sorted[low - 1];
        Double most = high > n ? null : (Double) sorted[high - 1];
        return new Quantile(probability, sorted[rank], least, most, low, high, coverage);
    }

    /** The least k with P(B <= k) at least the probability. */
    private static int point(double probability, int n, double p) {
        int low = 0;
        int high = n;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (BetaFunction.binomialAtMost(middle, n, p) >= probability) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
