package org.stillrail.electrical.ripple;

import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * How many harmonics are summed one by one, and the asymptote that takes the place of all the others.
 *
 * <p>For a growing number N the bank's distance from the asymptote through its impedance at 2 N is looked at on a scan far
 * beyond N. A resonance leaves broad skirts on such a scan however narrow its peak is, so it cannot hide. N is large
 * enough when the harmonics above it, each at its upper bound, times that distance come to less than the asked share of a
 * lower bound of the peak-to-peak voltage.
 *
 * @param harmonics   N, a power of two
 * @param truncationV upper bound of what is lost above N
 */
record HarmonicPlan(int harmonics, Asymptote asymptote, double truncationV, double leastPeakToPeakV) {

    static final int FEWEST = 128;
    static final int MOST = 1 << 16;
    private static final long MOST_WORK = 100_000_000;
    private static final int SCAN_PER_DECADE = 40;
    private static final double OFF_HARMONICS = 1.00371;

    static HarmonicPlan of(BankResponse bank, PiecewiseLinear current, double accuracy) {
        double hz = 1 / current.periodS();
        double inductance = bank.inductanceAtInfinityH();
        double least = leastPeakToPeakV(bank, current, inductance);
        Curve z = scanned(bank, hz);
        long cap = Math.max(FEWEST, Math.min(MOST, MOST_WORK / current.pieces()));
        HarmonicPlan best = null;
        for (int n = FEWEST; n <= cap; n *= 2) {
            double omega = 2 * Math.PI * 2 * n * hz;
            ImpedancePoint end = bank.at(omega / (2 * Math.PI));
            Asymptote asymptote = Asymptote.through(omega, end.resistanceOhm(), end.reactanceOhm(), inductance);
            double lost = lostAbove(n, hz, z, asymptote, current);
            if (best == null || lost < best.truncationV || !(best.truncationV >= 0)) {
                best = new HarmonicPlan(n, asymptote, lost, least);
            }
            if (lost <= accuracy * least) {
                break;
            }
        }
        return best;
    }

    /** What is lost above a given number of harmonics, at most, over the least peak-to-peak voltage. */
    static double lostShare(BankResponse bank, PiecewiseLinear current, int harmonics) {
        double hz = 1 / current.periodS();
        double inductance = bank.inductanceAtInfinityH();
        double omega = 2 * Math.PI * 2 * harmonics * hz;
        ImpedancePoint end = bank.at(omega / (2 * Math.PI));
        Asymptote asymptote = Asymptote.through(omega, end.resistanceOhm(), end.reactanceOhm(), inductance);
        double least = leastPeakToPeakV(bank, current, inductance);
        double lost = lostAbove(harmonics, hz, scanned(bank, hz), asymptote, current);
        return least == 0 ? 0 : lost / least;
    }

    private static Curve scanned(BankResponse bank, double hz) {
        int points = (int) Math.ceil(Math.log10(8.0 * MOST / FEWEST) * SCAN_PER_DECADE);
        return bank.on(FrequencyGrid.logSpaced(OFF_HARMONICS * FEWEST * hz, OFF_HARMONICS * 8.0 * MOST * hz, points)).bank();
    }

    /** Twice the rms voltage of the first harmonics, or the largest step of the inductance: peak to peak is never less. */
    private static double leastPeakToPeakV(BankResponse bank, PiecewiseLinear current, double inductance) {
        int n = FEWEST;
        double[] re = new double[n];
        double[] im = new double[n];
        current.harmonics(re, im);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double size = re[i] * re[i] + im[i] * im[i];
            if (size > 0) {
                sum += 2 * size * bank.at((i + 1) / current.periodS()).squaredMagnitude();
            }
        }
        return Math.max(2 * Math.sqrt(sum), inductance * current.largestSlopeJump());
    }

    private static double lostAbove(int n, double hz, Curve z, Asymptote asymptote, PiecewiseLinear current) {
        FrequencyGrid scan = z.grid();
        double square = current.squareBoundA();
        double linear = current.linearBoundA();
        double lost = 0;
        double previous = Double.NaN;
        for (int i = 0; i < scan.size(); i++) {
            double order = scan.hz(i) / hz;
            if (order < n) {
                continue;
            }
            // Sum over n of 2 |i_n| distance, as an integral over ln n.
            double density = 2 * Math.min(square / order, linear)
                    * asymptote.distanceOhm(scan.omega(i), z.real(i), z.imaginary(i));
            double step = scan.logHz(i) - (Double.isNaN(previous) ? Math.log(n * hz) : scan.logHz(i - 1));
            lost += step * (Double.isNaN(previous) ? density : (density + previous) / 2);
            previous = density;
        }
        return lost;
    }
}
