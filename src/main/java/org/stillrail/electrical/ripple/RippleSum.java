package org.stillrail.electrical.ripple;

import org.stillrail.electrical.bank.BankCurves;
import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The voltage that a piecewise-linear current makes across a bank, and what each of C, ESR and ESL makes of it.
 *
 * <p>Above all resonances the impedance is its asymptote {@code s L + R + S / s}, whose response is exact and holds every
 * jump and kink. What is left, {@code (Z(n w) - asymptote) i_n}, falls off with at least the third power of n; it is summed
 * by one transform for the real and the reactive part together.
 */
final class RippleSum {

    private final PiecewiseLinear current;
    private final HarmonicPlan plan;
    private final BankCurves curves;
    private final double[] currentRe;
    private final double[] currentIm;
    private final double[] resistiveRest;
    private final double[] reactiveRest;

    RippleSum(BankResponse bank, PiecewiseLinear current, double accuracy) {
        this.current = current;
        this.plan = HarmonicPlan.of(bank, current, accuracy);
        int n = plan.harmonics();
        double[] hz = new double[n];
        for (int i = 0; i < n; i++) {
            hz[i] = (i + 1) / current.periodS();
        }
        this.curves = bank.on(FrequencyGrid.of(hz));
        this.currentRe = new double[n];
        this.currentIm = new double[n];
        current.harmonics(currentRe, currentIm);
        int size = n <= 8192 ? 8 * n : 4 * n;
        this.resistiveRest = new double[size];
        this.reactiveRest = new double[size];
        fillRest(size);
    }

    private void fillRest(int size) {
        Curve z = curves.bank();
        Asymptote asymptote = plan.asymptote();
        for (int i = 0; i < currentRe.length; i++) {
            double r = z.real(i) - asymptote.resistanceOhm();
            double x = z.imaginary(i) - asymptote.reactanceOhm(z.grid().omega(i));
            // Resistive rest r i_n in the real signal, reactive rest j x i_n in the imaginary one.
            double aRe = r * currentRe[i];
            double aIm = r * currentIm[i];
            double bRe = -x * currentIm[i];
            double bIm = x * currentRe[i];
            resistiveRest[i + 1] = aRe - bIm;
            reactiveRest[i + 1] = aIm + bRe;
            resistiveRest[size - i - 1] = aRe + bIm;
            reactiveRest[size - i - 1] = bRe - aIm;
        }
        InverseDft.transform(resistiveRest, reactiveRest);
    }

    ExactVoltage total() {
        double[] rest = new double[resistiveRest.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = resistiveRest[i] + reactiveRest[i];
        }
        return new ExactVoltage(current, plan.asymptote(), rest);
    }

    ExactVoltage fromResistance() {
        return new ExactVoltage(current, plan.asymptote().resistivePart(), resistiveRest);
    }

    ExactVoltage fromCapacitance() {
        return new ExactVoltage(current, plan.asymptote().capacitivePart(), reactiveRest);
    }

    ExactVoltage fromInductance() {
        return new ExactVoltage(current, plan.asymptote().inductivePart(), new double[8]);
    }

    /**
     * rms voltage: the asymptote's response squared and averaged piece by piece (a polynomial of the fourth degree, exact by
     * Gauss's rule of three points), and the rest and the product of both by harmonics.
     */
    double rmsV() {
        Asymptote a = plan.asymptote();
        Curve z = curves.bank();
        double square = exactMeanSquare();
        for (int i = 0; i < currentRe.length; i++) {
            double power = 2 * (currentRe[i] * currentRe[i] + currentIm[i] * currentIm[i]);
            double asymptoteX = a.reactanceOhm(z.grid().omega(i));
            double whole = z.real(i) * z.real(i) + z.imaginary(i) * z.imaginary(i);
            square += power * (whole - a.resistanceOhm() * a.resistanceOhm() - asymptoteX * asymptoteX);
        }
        return Math.sqrt(Math.max(0, square));
    }

    private double exactMeanSquare() {
        Asymptote a = plan.asymptote();
        double offset = Math.sqrt(0.6) / 2;
        double sum = 0;
        for (int piece = 0; piece < current.pieces(); piece++) {
            double start = current.startS(piece);
            double length = current.endS(piece) - start;
            double part = 0;
            for (int k = -1; k <= 1; k++) {
                double t = start + length * (0.5 + k * offset);
                double v = a.inductanceH() * current.slope(piece)
                        + a.resistanceOhm() * current.current(piece, t)
                        + a.elastancePerF() * current.charge(piece, t);
                part += (k == 0 ? 8.0 / 18 : 5.0 / 18) * v * v;
            }
            sum += part * length;
        }
        return sum / current.periodS();
    }

    HarmonicPlan plan() {
        return plan;
    }

    BankCurves curves() {
        return curves;
    }

    /** Squared rms current of each harmonic in A^2, from order 1. */
    double[] squaredCurrents() {
        double[] squares = new double[currentRe.length];
        for (int i = 0; i < squares.length; i++) {
            squares[i] = 2 * (currentRe[i] * currentRe[i] + currentIm[i] * currentIm[i]);
        }
        return squares;
    }
}
