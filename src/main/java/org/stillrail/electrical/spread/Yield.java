package org.stillrail.electrical.spread;

/**
 * The share of random banks that keep a limit, with the interval in which the true share lies with 95 % confidence, by C. J. Clopper
 * and E. S. Pearson, Biometrika 26, 1934: from the beta quantiles, and so never too narrow.
 *
 * @param kept  how many keep it
 * @param runs  of how many
 * @param share kept over runs
 * @param least lower end of the interval
 * @param most  upper end
 */
public record Yield(int kept, int runs, double share, double least, double most) {

    public static final double CONFIDENCE = 0.95;

    public static Yield of(int kept, int runs) {
        if (runs < 1 || kept < 0 || kept > runs) {
            throw new IllegalArgumentException("kept must be from 0 to runs, and runs at least 1, not " + kept + " of " + runs);
        }
        double tail = (1 - CONFIDENCE) / 2;
        double least = kept == 0 ? 0 : BetaFunction.inverse(tail, kept, runs - kept + 1.0);
        double most = kept == runs ? 1 : BetaFunction.inverse(1 - tail, kept + 1.0, runs - kept);
        return new Yield(kept, runs, (double) kept / runs, least, most);
    }
}
