package org.stillrail.electrical.ripple;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The ripple of many banks under one current, when only their impedance changes: harmonics, number of terms and all tables are worked
 * out once. The sum is that of {@link Ripple#quickPeakToPeakV}, an asymptote whose response is exact and a rest by one transform, with as
 * many harmonics as the most demanding of the banks that it was made for. Safe for use by several threads.
 */
public final class RippleBasis {

    private static final double ACCURACY = 1e-3;
    private static final int MOST_HARMONICS = 8192;
    private static final int POINTS_PER_HARMONIC = 8;
    private static final int FEWER_POINTS_PER_HARMONIC = 4;
    private static final int MANY = 1024;

    private final PiecewiseLinear current;
    private final FrequencyGrid grid;
    private final double[] currentRe;
    private final double[] currentIm;
    private final double[] cos;
    private final double[] sin;
    private final double relativeError;

    private RippleBasis(PiecewiseLinear current, int harmonics, double relativeError) {
        this.current = current;
        this.relativeError = relativeError;
        this.currentRe = new double[harmonics];
        this.currentIm = new double[harmonics];
        current.harmonics(currentRe, currentIm);
        double[] hz = new double[harmonics + 1];
        for (int i = 0; i < harmonics; i++) {
            hz[i] = (i + 1) / current.periodS();
        }
        hz[harmonics] = 2 * harmonics / current.periodS();
        this.grid = FrequencyGrid.of(hz);
        int size = harmonics * (harmonics <= MANY ? POINTS_PER_HARMONIC : FEWER_POINTS_PER_HARMONIC);
        this.cos = InverseDft.cosines(size);
        this.sin = InverseDft.sines(size);
    }

    /** @param banks the extremes of what will be asked about, at least one */
    public static RippleBasis of(List<Bank> banks, PeriodicCurrent current) {
        int harmonics = 0;
        for (Bank bank : banks) {
            harmonics = Math.max(harmonics, HarmonicPlan.of(bank.response(Node.CONVERTER, Node.LOAD), current.waveform(), ACCURACY).harmonics());
        }
        if (harmonics == 0) {
            throw new IllegalArgumentException("At least one bank is needed");
        }
        int kept = Math.min(harmonics, MOST_HARMONICS);
        double worst = 0;
        for (Bank bank : banks) {
            worst = Math.max(worst, HarmonicPlan.lostShare(bank.response(Node.CONVERTER, Node.LOAD), current.waveform(), kept));
        }
        return new RippleBasis(current.waveform(), kept, worst);
    }

    /** Where the impedance is asked for: the harmonics, and one point far above them that fixes the asymptote. */
    public FrequencyGrid frequencies() {
        return grid;
    }

    /** Upper bound of the truncated harmonics over the least peak-to-peak value, of the worst bank that this was made for. */
    public double relativeError() {
        return relativeError;
    }

    /**
     * Peak-to-peak ripple voltage in V.
     *
     * @param resistanceOhm on {@link #frequencies}
     * @param reactanceOhm  likewise
     * @param inductanceH   that the impedance tends to at high frequency
     */
    public double peakToPeakV(double[] resistanceOhm, double[] reactanceOhm, double inductanceH) {
        int n = currentRe.length;
        Asymptote asymptote = Asymptote.through(grid.omega(n), resistanceOhm[n], reactanceOhm[n], inductanceH);
        int size = 2 * cos.length;
        double[] re = new double[size];
        double[] im = new double[size];
        for (int i = 0; i < n; i++) {
            double r = resistanceOhm[i] - asymptote.resistanceOhm();
            double x = reactanceOhm[i] - asymptote.reactanceOhm(grid.omega(i));
            double vRe = r * currentRe[i] - x * currentIm[i];
            double vIm = r * currentIm[i] + x * currentRe[i];
            re[i + 1] = vRe;
            im[i + 1] = vIm;
            re[size - i - 1] = vRe;
            im[size - i - 1] = -vIm;
        }
        InverseDft.transform(re, im, cos, sin);
        return new ExactVoltage(current, asymptote, re).peakToPeak();
    }
}
