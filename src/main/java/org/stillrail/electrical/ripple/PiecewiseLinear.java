package org.stillrail.electrical.ripple;

import java.util.Arrays;

/**
 * A periodic current of straight lines with zero mean, its charge and its harmonics, all exact.
 *
 * <p>The second derivative is a train of impulses, one at each kink, as large as the jump of the slope. So with kinks at
 * t_k and jumps dm_k the Fourier coefficient of order n is {@code -sum(dm_k exp(-j n w t_k)) / (T n^2 w^2)}.
 */
public final class PiecewiseLinear {

    private static final int RESYNC = 32;
    private static final double SAME_TIME = 1e-12;

    private final double periodS;
    private final double[] time;
    private final double[] current;
    private final double[] slope;
    private final double[] charge;

    private PiecewiseLinear(double periodS, double[] time, double[] current) {
        int n = time.length;
        this.periodS = periodS;
        this.time = time;
        this.current = current;
        this.slope = new double[n];
        this.charge = new double[n];
        double area = 0;
        for (int k = 0; k < n; k++) {
            area += (current[k] + current[(k + 1) % n]) / 2 * length(k);
        }
        double mean = area / periodS;
        for (int k = 0; k < n; k++) {
            current[k] -= mean;
        }
        double chargeArea = 0;
        for (int k = 0; k < n; k++) {
            double dt = length(k);
            slope[k] = (current[(k + 1) % n] - current[k]) / dt;
            if (k + 1 < n) {
                charge[k + 1] = charge[k] + (current[k] + current[k + 1]) / 2 * dt;
            }
            chargeArea += dt * (charge[k] + dt * (current[k] / 2 + dt * slope[k] / 6));
        }
        for (int k = 0; k < n; k++) {
            charge[k] -= chargeArea / periodS;
        }
    }

    /** From the first {@code points} entries; times ascend from 0 and stay below the period. */
    static PiecewiseLinear of(double periodS, double[] timeS, double[] currentA, int points) {
        return new PiecewiseLinear(periodS, Arrays.copyOf(timeS, points), Arrays.copyOf(currentA, points));
    }

    /**
     * The sum of equal currents, each later than the one before by the same part of the period.
     *
     * @param phases 1 or more
     */
    static PiecewiseLinear interleaved(PiecewiseLinear one, int phases) {
        if (phases == 1) {
            return one;
        }
        double[] times = new double[one.time.length * phases];
        int n = 0;
        for (int k = 0; k < phases; k++) {
            for (double t : one.time) {
                times[n++] = inside(t + k * one.periodS / phases, one.periodS);
            }
        }
        Arrays.sort(times);
        n = 0;
        for (double t : times) {
            if (n == 0 || t - times[n - 1] > SAME_TIME * one.periodS) {
                times[n++] = t;
            }
        }
        double[] sums = new double[n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < phases; k++) {
                double t = inside(times[i] - k * one.periodS / phases, one.periodS);
                sums[i] += one.current(one.pieceAt(t), t);
            }
        }
        return of(one.periodS, times, sums, n);
    }

    private static double inside(double t, double periodS) {
        double shifted = t - Math.floor(t / periodS) * periodS;
        return shifted >= periodS * (1 - SAME_TIME) ? 0 : shifted;
    }

    public double periodS() {
        return periodS;
    }

    /** Number of straight pieces; piece k runs from kink k to the next one. */
    public int pieces() {
        return time.length;
    }

    public double startS(int piece) {
        return time[piece];
    }

    public double endS(int piece) {
        return piece + 1 < time.length ? time[piece + 1] : periodS;
    }

    private double length(int piece) {
        return endS(piece) - time[piece];
    }

    /** The piece that a time from 0 up to the period falls in; a kink belongs to the piece that starts there. */
    int pieceAt(double t) {
        int found = Arrays.binarySearch(time, t);
        return found >= 0 ? found : -found - 2;
    }

    /** Slope in A/s. */
    double slope(int piece) {
        return slope[piece];
    }

    /** Current in A. */
    double current(int piece, double t) {
        return current[piece] + slope[piece] * (t - time[piece]);
    }

    /** Charge in A s, zero mean: the integral of the current. */
    double charge(int piece, double t) {
        double u = t - time[piece];
        return charge[piece] + u * (current[piece] + u * slope[piece] / 2);
    }

    /** Highest minus lowest current in A. */
    public double peakToPeakA() {
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (double i : current) {
            high = Math.max(high, i);
            low = Math.min(low, i);
        }
        return high - low;
    }

    /** Mean of the squared current in A^2. */
    double meanSquare() {
        double sum = 0;
        for (int k = 0; k < time.length; k++) {
            double a = current[k];
            double b = current[(k + 1) % time.length];
            sum += (a * a + a * b + b * b) / 3 * length(k);
        }
        return sum / periodS;
    }

    /** rms current in A, mean excluded. */
    public double rmsA() {
        return Math.sqrt(meanSquare());
    }

    double largestSlopeJump() {
        double largest = 0;
        for (int k = 0; k < slope.length; k++) {
            largest = Math.max(largest, Math.abs(slopeJump(k)));
        }
        return largest;
    }

    private double slopeJump(int k) {
        return slope[k] - slope[k == 0 ? slope.length - 1 : k - 1];
    }

    /** A: the harmonic of order n is never larger than {@code A / n^2}. */
    double squareBoundA() {
        double sum = 0;
        for (int k = 0; k < slope.length; k++) {
            sum += Math.abs(slopeJump(k));
        }
        return sum * periodS / (4 * Math.PI * Math.PI);
    }

    /** B: the harmonic of order n is never larger than {@code B / n}. */
    double linearBoundA() {
        double variation = 0;
        for (int k = 0; k < current.length; k++) {
            variation += Math.abs(current[(k + 1) % current.length] - current[k]);
        }
        return variation / (2 * Math.PI);
    }

    /**
     * Coefficients of {@code exp(j n w t)}, n from 1 at index 0; those of negative n are their conjugates.
     *
     * @param re modified, as long as {@code im}
     * @param im modified
     */
    void harmonics(double[] re, double[] im) {
        Arrays.fill(re, 0);
        Arrays.fill(im, 0);
        for (int k = 0; k < time.length; k++) {
            addImpulses(slopeJump(k), time[k] / periodS, re, im);
        }
        double omega = 2 * Math.PI / periodS;
        for (int i = 0; i < re.length; i++) {
            double n = i + 1;
            double factor = -1 / (periodS * n * n * omega * omega);
            re[i] *= factor;
            im[i] *= factor;
        }
    }

    /** Amplitudes in A of the harmonics of order 1, 2, ... up to {@code orders}: half their peak-to-peak current. */
    public double[] amplitudesA(int orders) {
        double[] re = new double[orders];
        double[] im = new double[orders];
        harmonics(re, im);
        for (int i = 0; i < orders; i++) {
            re[i] = 2 * Math.hypot(re[i], im[i]);
        }
        return re;
    }

    private static void addImpulses(double jump, double turn, double[] re, double[] im) {
        if (jump == 0) {
            return;
        }
        double stepCos = Math.cos(2 * Math.PI * turn);
        double stepSin = -Math.sin(2 * Math.PI * turn);
        double cos = 1;
        double sin = 0;
        for (int i = 0; i < re.length; i++) {
            if (i % RESYNC == 0) {
                double turns = (i + 1) * turn;
                double angle = -2 * Math.PI * (turns - Math.floor(turns));
                cos = Math.cos(angle);
                sin = Math.sin(angle);
            } else {
                double next = cos * stepCos - sin * stepSin;
                sin = cos * stepSin + sin * stepCos;
                cos = next;
            }
            re[i] += jump * cos;
            im[i] += jump * sin;
        }
    }
}
