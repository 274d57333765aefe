package org.stillrail.electrical.fit;

import java.util.stream.IntStream;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.fit.PartialFractions.Terms;

/**
 * Whether a measured impedance could belong to a linear, causal, stable part at all: the residual of the points against the
 * nearest curve that fulfils the Kramers-Kronig relations by its form. A range switch, drift during the sweep, a wrong
 * fixture or an overdriven part show up as a residual with a pattern; noise as one without.
 *
 * <p>First a measurement model: a resistance, an inductance, a capacitance and relaxations {@code r / (1 + j w tau)} of
 * either sign with fixed tau, evenly over log frequency, linear in all unknowns (B. A. Boukamp, J. Electrochem. Soc. 142(6), 1995;
 * M. Schönleber et al., Electrochimica Acta 131, 2014; from memory). Their number grows until more bring nothing. Parts
 * with inner resonances need complex poles; where the measurement model stays above {@code GOOD}, the rational fit with the same
 * property is tried, and the nearer of the two is the answer.
 *
 * <p>Bad input gives the same exceptions as {@link VectorFitting#fit(Curve)}, but never 'did not converge'.
 */
public final class KramersKronigCheck {

    /** rms residual over |Z| below which relaxations alone explain the points. */
    private static final double GOOD = 0.003;
    private static final double AS_GOOD = 1.1;
    private static final int MOST_PER_DECADE = 6;
    private static final double LOUD_PERCENT = 5;
    private static final int MOST_POINTS = 1000;

    private KramersKronigCheck() {
    }

    /**
     * The residual of each point, measured minus model, over |Z| of the point, in per cent.
     *
     * @param grid             the points' frequencies
     * @param realPercent      of the real part, one a point
     * @param imaginaryPercent of the imaginary part
     * @param rmsPercent       root mean square of the complex residual
     * @param worstPercent     its largest magnitude
     * @param worstHz          where that is
     * @param noisePercent     one standard deviation of each part as the scatter of neighbours shows it, without any model
     * @param loudestPercent   what noise alone makes at each point now and then; 0 where no noise could be told from curvature
     * @param elements         relaxations or poles in the model that the residual is taken against
     */
    public record Result(FrequencyGrid grid, double[] realPercent, double[] imaginaryPercent, double rmsPercent, double worstPercent,
                         double worstHz, double noisePercent, double[] loudestPercent, int elements) {

        /**
         * Indices of the points whose residual is above {@code tolerancePercent} and above what noise explains; noise over
         * {@code LOUD_PERCENT} explains nothing.
         *
         * @param tolerancePercent 1 is common practice, no source
         */
        public int[] suspects(double tolerancePercent) {
            return IntStream.range(0, grid.size()).filter(i -> {
                double noise = noisePercent > LOUD_PERCENT ? 0 : loudestPercent[i];
                return Math.hypot(realPercent[i], imaginaryPercent[i]) > Math.max(tolerancePercent, noise);
            }).toArray();
        }

        public boolean consistent(double tolerancePercent) {
            return suspects(tolerancePercent).length == 0;
        }
    }

    public static Result of(Curve impedance) {
        VectorFitting.check(impedance);
        Samples samples = Samples.plain(impedance);
        ResidueFit model = measurementModel(samples);
        if (model.error.rms() > Math.max(GOOD, 2 * samples.noise.typical())) {
            ResidueFit rational = VectorFitting.nearest(impedance, samples);
            if (rational.error.rms() < model.error.rms()) {
                model = rational;
            }
        }
        return residual(impedance, samples, model);
    }

    private static ResidueFit measurementModel(Samples all) {
        Samples samples = all.thinned(MOST_POINTS);
        double first = samples.omega[0];
        double last = samples.omega[samples.size() - 1];
        int most = (int) Math.min((samples.size() - 2) / 2.0, Math.ceil(MOST_PER_DECADE * Math.log10(last / first)));
        Terms terms = new Terms(true, true);
        ResidueFit richest = ResidueFit.ofAnySign(samples, PoleSet.reals(Math.max(1, most), first, last), terms);
        int fewest = 0;
        int enough = Math.max(1, most);
        while (enough - fewest > 1) {
            int middle = (fewest + enough) / 2;
            ResidueFit fit = ResidueFit.ofAnySign(samples, PoleSet.reals(middle, first, last), terms);
            if (fit.error.rms() <= AS_GOOD * richest.error.rms() || fit.error.rms() < 1e-6) {
                enough = middle;
            } else {
                fewest = middle;
            }
        }
        return ResidueFit.ofAnySign(all, PoleSet.reals(enough, first, last), terms);
    }

    private static Result residual(Curve impedance, Samples samples, ResidueFit model) {
        int n = samples.size();
        RationalFunction function = model.function();
        double[] re = new double[n];
        double[] im = new double[n];
        double[] loudest = new double[n];
        for (int i = 0; i < n; i++) {
            loudest[i] = 100 * samples.loudest(i);
            var z = function.at(samples.omega[i]);
            re[i] = 100 * (samples.re[i] - z.re()) / samples.magnitude[i];
            im[i] = 100 * (samples.im[i] - z.im()) / samples.magnitude[i];
        }
        FitError error = model.error;
        return new Result(impedance.grid(), re, im, 100 * error.rms(), 100 * error.worst(), impedance.grid().hz(error.worstAt()),
                100 * samples.noise.typical(), loudest, model.poles.order());
    }
}
