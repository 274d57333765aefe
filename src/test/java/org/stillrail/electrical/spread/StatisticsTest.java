package org.stillrail.electrical.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Beta function, yield and order statistics. */
class StatisticsTest {

    private static final Source SCIPY = Source.independent("scipy");

    @ParameterizedTest
    @CsvSource({
        "0.3, 2, 5, 0.579825", "0.05, 51, 950, 0.4624709591985727", "0.5, 0.5, 0.5, 0.5", "0.02, 200, 9801, 0.5096887327676877",
        "0.999, 3, 1000, 1", "0, 2, 3, 0", "1, 2, 3, 1"})
    void incompleteBeta(double x, double a, double b, double expected) {
        Check.that(Topic.SPREAD, "Incomplete beta function at %s of %s and %s".formatted(x, a, b)).source(SCIPY).expected("", expected).absolute(1e-11)
                .got(BetaFunction.regularised(x, a, b));
        assertThat(BetaFunction.regularised(1 - x, b, a)).isCloseTo(1 - expected, within(1e-11));
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 2.252712651734206", "0.5, 0.5723649429247", "1, 0", "3.7, 1.428072326665388", "20, 39.339884187199495",
        "1000.5, 5908.674175848678"})
    void logarithmOfGamma(double x, double expected) {
        Check.that(Topic.SPREAD, "Logarithm of the gamma function of " + x).source(SCIPY).expected("", expected).absolute(1e-12 * Math.max(1, expected))
                .got(BetaFunction.logGamma(x));
    }

    /** By adding up the probabilities themselves. */
    @Test
    void binomialTail() {
        double sum = 0;
        double probability = Math.pow(0.7, 10);
        for (int k = 0; k <= 4; k++) {
            sum += probability;
            assertThat(BetaFunction.binomialAtMost(k, 10, 0.3)).isCloseTo(sum, within(1e-13));
            probability *= (10.0 - k) / (k + 1) * 0.3 / 0.7;
        }
        assertThat(BetaFunction.binomialAtMost(-1, 10, 0.3)).isZero();
        assertThat(BetaFunction.binomialAtMost(10, 10, 0.3)).isEqualTo(1);
    }

    /** ST-01 and ST-02: the fewest samples so that more than c of them lie in the tail with the wanted confidence. */
    @ParameterizedTest
    @CsvSource({"0, 0.95, 0.95, 59", "1, 0.95, 0.95, 93", "2, 0.95, 0.95, 124", "3, 0.95, 0.95, 153", "4, 0.95, 0.95, 181",
        "0, 0.9, 0.9, 22", "0, 0.9, 0.95, 29", "0, 0.99, 0.95, 299", "0, 0.99, 0.9, 230", "0, 0.98, 0.95, 149"})
    void wilksSampleSizes(int failures, double coverage, double confidence, int expected) {
        Check.that(Topic.SPREAD, "Fewest samples for %s coverage at %s confidence with %d failures, by our binomial tail".formatted(coverage, confidence, failures))
                .source(Source.seenSecondHand("S. S. Wilks, Ann. Math. Stat. 12, 1941; numbers in public source files")).expected("samples", expected)
                .got(fewestSamples(failures, coverage, confidence));
    }

    /** ST-03: from the smallest to the largest value, two of the samples lie outside. */
    @ParameterizedTest
    @CsvSource({"0.95, 0.95, 93", "0.9, 0.95, 46", "0.99, 0.95, 473"})
    void wilksTwoSidedSampleSizes(double coverage, double confidence, int expected) {
        Check.that(Topic.SPREAD, "Fewest samples whose extremes cover %s at %s confidence, by our binomial tail".formatted(coverage, confidence))
                .source(Source.fromMemory("S. S. Wilks, Ann. Math. Stat. 12, 1941")).expected("samples", expected)
                .got(fewestSamples(1, coverage, confidence));
    }

    private static int fewestSamples(int failures, double coverage, double confidence) {
        int n = 1;
        while (BetaFunction.binomialAtMost(failures, n, 1 - coverage) > 1 - confidence) {
            n++;
        }
        return n;
    }

    /** ST-05: Clopper and Pearson, 95 %; of 1000, and three more. */
    @ParameterizedTest
    @CsvSource({
        "0, 1000, 0, 0.003682083896865671",
        "3, 1000, 0.0006190999316495715, 0.008742023238478303",
        "50, 1000, 0.03733539760466178, 0.06539048791549364",
        "7, 10, 0.3475471499400027, 0.9332604888222655",
        "9500, 10000, 0.9455454729716412, 0.9541900578012295",
        "10000, 10000, 0.9996311800853812, 1"})
    void intervalOfAYield(int kept, int runs, double least, double most) {
        Yield yield = Yield.of(kept, runs);
        Check.that(Topic.SPREAD, "95 %% interval of a yield of %d in %d".formatted(kept, runs))
                .source(Source.fromMemory("C. J. Clopper, E. S. Pearson, Biometrika 26, 1934; beta quantiles by scipy")).expected("", least, most).relative(1e-9)
                .got(yield.least(), yield.most());
        assertThat(yield.share()).isBetween(yield.least(), yield.most());
    }

    @Test
    void yieldOfNothingIsRefused() {
        assertThatThrownBy(() -> Yield.of(0, 0)).hasMessageContaining("runs");
        assertThatThrownBy(() -> Yield.of(3, 2)).hasMessageContaining("kept");
    }

    /** ST-09: ranks that bracket a quantile of 1000. */
    @ParameterizedTest
    @CsvSource({"0.05, 37, 65, 0.9580952682226549", "0.5, 469, 532, 0.9537088026395018", "0.95, 936, 964, 0.9580952682226541"})
    void ranksOfAQuantile(double probability, int leastRank, int mostRank, double coverage) {
        double[] sorted = IntStream.rangeClosed(1, 1000).asDoubleStream().toArray();
        Quantile quantile = Quantile.of(sorted, probability);
        Source ranks = Source.fromMemory("order statistics, binomial sums by scipy");
        Check.that(Topic.SPREAD, "Ranks that bracket the quantile of " + probability + " of 1000 with at least 95 %").source(ranks)
                .expected("", leastRank, mostRank).got(quantile.leastRank(), quantile.mostRank());
        Check.that(Topic.SPREAD, "Coverage of the bracket of the quantile of " + probability + " of 1000").source(ranks).expected("", coverage).absolute(1e-9)
                .got(quantile.coverage());
        assertThat(quantile.least()).isEqualTo(leastRank);
        assertThat(quantile.most()).isEqualTo(mostRank);
        assertThat(quantile.value()).isBetween(quantile.least(), quantile.most());
    }

    @Test
    void smallSampleHasNoBracketInItsTail() {
        Quantile quantile = Quantile.of(new double[] {1, 2, 3, 4, 5}, 0.01);
        assertThat(quantile.least()).isNull();
        assertThat(quantile.value()).isEqualTo(1);
    }

    /** ST-06: sigma of the half width over the root of 3 and of 6; 100 000 numbers of one seed, 5 sigma of their own scatter allowed. */
    @Test
    void shapesHaveTheirSigma() {
        Source tables = Source.fromMemory("tables of distributions");
        Check.that(Topic.SPREAD, "Sigma of 100 000 even draws within 10 %: a / sqrt 3").source(tables).expected("", 0.05773502691896258)
                .absolute(5 * 0.0577 / Math.sqrt(2e5)).got(sigma(Tolerance.uniform(0.1)));
        Check.that(Topic.SPREAD, "Sigma of 100 000 triangular draws within 10 %: a / sqrt 6").source(tables).expected("", 0.040824829046386304)
                .absolute(5 * 0.0408 / Math.sqrt(2e5)).got(sigma(Tolerance.triangular(0.1)));
    }

    private static double sigma(Tolerance tolerance) {
        double sum = 0;
        double squares = 0;
        int n = 100_000;
        for (int i = 0; i < n; i++) {
            double d = tolerance.at(new CounterRandom(11, i).uniform(0));
            assertThat(d).isBetween(tolerance.least(), tolerance.most());
            sum += d;
            squares += d * d;
        }
        return Math.sqrt(squares / n - sum / n * (sum / n));
    }

    /** Chi-square over 100 bins has mean 99 and sigma 14; also from one variable to the next, and from one seed to the next. */
    @Test
    void numbersAreEvenAndUnrelated() {
        int n = 100_000;
        int[] bins = new int[100];
        int[] pairs = new int[100];
        int[] seeds = new int[100];
        for (int i = 0; i < n; i++) {
            CounterRandom random = new CounterRandom(5, i);
            double a = random.uniform(0);
            bins[(int) (a * 100)]++;
            pairs[(int) (a * 10) * 10 + (int) (random.uniform(1) * 10)]++;
            seeds[(int) (a * 10) * 10 + (int) (new CounterRandom(6, i).uniform(0) * 10)]++;
        }
        for (int[] counts : new int[][] {bins, pairs, seeds}) {
            double chi = IntStream.of(counts).mapToDouble(count -> (count - 1000.0) * (count - 1000.0) / 1000).sum();
            assertThat(chi).isBetween(99 - 5 * 14.1, 99 + 5 * 14.1);
        }
    }

    @Test
    void histogramCountsEverything() {
        FigureSpread spread = new FigureSpread(DrawnFigure.ofBank(RandomFigure.RIPPLE), 2, new double[] {3, 1, 2, 4});
        assertThat(spread.histogram(3)).containsExactly(1, 1, 2);
        assertThat(spread.mean()).isEqualTo(2.5);
        assertThat(spread.sigma()).isCloseTo(Math.sqrt(5.0 / 3), within(1e-12));
        assertThat(new FigureSpread(DrawnFigure.ofBank(RandomFigure.RIPPLE), 2, new double[] {1, 1}).histogram(2)).containsExactly(2, 0);
    }

    /** Known points of the normal distribution, from tables (from memory: 1.645, 1.960, 2.576 sigma). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0", "0.75, 0.6744897501960817", "0.95, 1.6448536269514722", "0.975, 1.959963984540054", "0.995, 2.5758293035489004",
        "0.0013498980316300946, -3"})
    void normalQuantiles(double probability, double sigmas) {
        assertThat(NormalQuantile.of(probability)).isCloseTo(sigmas, within(1e-13));
        assertThat(NormalQuantile.of(1 - probability)).isCloseTo(-sigmas, within(1e-12));
    }

    /** Against another implementation of the same distribution, by its inverse of the error function. */
    @Test
    void normalQuantilesAgreeWithTheErrorFunction() {
        for (int i = 1; i < 1000; i++) {
            double p = i / 1000.0;
            assertThat(NormalQuantile.of(p)).isCloseTo(Math.sqrt(2) * org.hipparchus.special.Erf.erfInv(2 * p - 1), within(1e-9));
        }
    }

    /**
     * Each shape keeps to its bounds, is even about their middle, and has the sigma that it states: half width over the root of 3, of 6,
     * and a third of it less what the cut at three sigma takes, {@code 1 - 6 phi(3) / (2 Phi(3) - 1)} of the variance.
     */
    @ParameterizedTest
    @CsvSource({"UNIFORM, 0.5773502691896258", "TRIANGULAR, 0.408248290463863", "NORMAL, 0.32885946"})
    void shapesOfATolerance(Tolerance.Shape shape, double sigmaOverHalfWidth) {
        Tolerance tolerance = new Tolerance(-0.1, 0.3, shape);
        int n = 200_000;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double u = (i + 0.5) / n;
            double deviation = tolerance.at(u);
            assertThat(deviation).isBetween(-0.1, 0.3);
            assertThat(deviation - 0.1).isCloseTo(0.1 - tolerance.at(1 - u), within(1e-12));
            squares += (deviation - 0.1) * (deviation - 0.1);
        }
        assertThat(Math.sqrt(squares / n) / 0.2).isCloseTo(sigmaOverHalfWidth, within(1e-5));
        assertThat(tolerance.at(0)).isCloseTo(-0.1, within(1e-12));
    }
}
