package org.stillrail.electrical.fit;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.curve.Complex;

/**
 * A real rational function in pole-residue form,
 * {@code F(s) = proportional s + constant + residueAtZero / s + sum of r / (s - p)}.
 *
 * <p>A complex pole stands for itself and its conjugate, so every value on the real axis is real. Immutable. Evaluation
 * at a pole on the imaginary axis divides by zero and follows IEEE rules; a lossless resonance is the only such case.
 */
public final class RationalFunction {

    private final double[] poleRe;
    private final double[] poleIm;
    private final double[] residueRe;
    private final double[] residueIm;
    private final double residueAtZero;
    private final double constant;
    private final double proportional;

    /**
     * @param poleRe        real parts, in rad/s, one entry for a real pole and one for a conjugate pair
     * @param poleIm        imaginary parts: 0 for a real pole, positive for a pair (the upper pole is meant)
     * @param residueRe     real part of the residue at that pole
     * @param residueIm     imaginary part; 0 for a real pole
     * @param residueAtZero residue of a pole at s = 0; 0 where there is none
     * @throws IllegalArgumentException when lengths differ or a real pole has a complex residue
     */
    public RationalFunction(double[] poleRe, double[] poleIm, double[] residueRe, double[] residueIm,
                            double residueAtZero, double constant, double proportional) {
        int n = poleRe.length;
        if (poleIm.length != n || residueRe.length != n || residueIm.length != n) {
            throw new IllegalArgumentException("Poles and residues must be equally many, not " + n + ", " + poleIm.length + ", "
                    + residueRe.length + " and " + residueIm.length);
        }
        for (int k = 0; k < n; k++) {
            if (poleIm[k] < 0 || poleIm[k] == 0 && residueIm[k] != 0) {
                throw new IllegalArgumentException(
                        "Entry " + k + " must be a real pole with a real residue or the upper pole of a pair");
            }
        }
        this.poleRe = poleRe.clone();
        this.poleIm = poleIm.clone();
        this.residueRe = residueRe.clone();
        this.residueIm = residueIm.clone();
        this.residueAtZero = residueAtZero;
        this.constant = constant;
        this.proportional = proportional;
    }

    /** Number of entries: real poles and pairs, the pole at 0 left out. */
    int entries() {
        return poleRe.length;
    }

    double poleRe(int k) {
        return poleRe[k];
    }

    double poleIm(int k) {
        return poleIm[k];
    }

    double residueRe(int k) {
        return residueRe[k];
    }

    double residueIm(int k) {
        return residueIm[k];
    }

    public double residueAtZero() {
        return residueAtZero;
    }

    public double constant() {
        return constant;
    }

    public double proportional() {
        return proportional;
    }

    /** Number of poles in the finite plane, both of a pair counted, the one at 0 included. */
    public int order() {
        int order = residueAtZero == 0 ? 0 : 1;
        for (double im : poleIm) {
            order += im == 0 ? 1 : 2;
        }
        return order;
    }

    /** Every pole in rad/s, conjugates spelt out, in the order of {@link #residues()}. */
    public List<Complex> poles() {
        List<Complex> all = new ArrayList<>(order());
        if (residueAtZero != 0) {
            all.add(Complex.ZERO);
        }
        spellOut(all, poleRe, poleIm);
        return List.copyOf(all);
    }

    /** The residue at each of {@link #poles()}. */
    public List<Complex> residues() {
        List<Complex> all = new ArrayList<>(order());
        if (residueAtZero != 0) {
            all.add(new Complex(residueAtZero, 0));
        }
        spellOut(all, residueRe, residueIm);
        return List.copyOf(all);
    }

    private void spellOut(List<Complex> all, double[] re, double[] im) {
        for (int k = 0; k < re.length; k++) {
            all.add(new Complex(re[k], im[k]));
            if (poleIm[k] != 0) {
                all.add(new Complex(re[k], -im[k]));
            }
        }
    }

    /** No pole in the right half-plane; on the imaginary axis at most the one at 0, which is simple. */
    public boolean stable() {
        for (double re : poleRe) {
            if (!(re < 0)) {
                return false;
            }
        }
        return true;
    }

    /** {@code F(j omega)} for a positive {@code omega} in rad/s. */
    public Complex at(double omega) {
        double re = constant;
        double im = omega * proportional - residueAtZero / omega;
        for (int k = 0; k < poleRe.length; k++) {
            double below = omega - poleIm[k];
            double square = poleRe[k] * poleRe[k] + below * below;
            re += (-residueRe[k] * poleRe[k] + residueIm[k] * below) / square;
            im += (-residueIm[k] * poleRe[k] - residueRe[k] * below) / square;
            if (poleIm[k] != 0) {
                double above = omega + poleIm[k];
                square = poleRe[k] * poleRe[k] + above * above;
                re += (-residueRe[k] * poleRe[k] - residueIm[k] * above) / square;
                im += (residueIm[k] * poleRe[k] - residueRe[k] * above) / square;
            }
        }
        return new Complex(re, im);
    }

    /** {@code d F(j omega) / d omega}. */
    public Complex slopeAt(double omega) {
        double re = 0;
        double im = proportional + residueAtZero / (omega * omega);
        for (int k = 0; k < poleRe.length; k++) {
            Complex slope = slopeOfTerm(poleRe[k], poleIm[k], residueRe[k], residueIm[k], omega);
            re += slope.re();
            im += slope.im();
            if (poleIm[k] != 0) {
                slope = slopeOfTerm(poleRe[k], -poleIm[k], residueRe[k], -residueIm[k], omega);
                re += slope.re();
                im += slope.im();
            }
        }
        return new Complex(re, im);
    }

    /** {@code d/d omega of r / (j omega - p) = -j r / (j omega - p)^2}. */
    private static Complex slopeOfTerm(double pRe, double pIm, double rRe, double rIm, double omega) {
        Complex toPole = new Complex(-pRe, omega - pIm);
        return new Complex(rIm, -rRe).over(toPole.times(toPole));
    }

    /** Limit of {@code Re F(j omega)} at 0; a pole at 0 adds nothing to the real part. */
    double realAtZero() {
        double sum = constant;
        for (int k = 0; k < poleRe.length; k++) {
            double square = poleRe[k] * poleRe[k] + poleIm[k] * poleIm[k];
            double term = -(residueRe[k] * poleRe[k] + residueIm[k] * poleIm[k]) / square;
            sum += poleIm[k] == 0 ? term : 2 * term;
        }
        return sum;
    }

    /** The function of {@code s} that equals this one at {@code s / rate}: frequencies times {@code rate}. */
    RationalFunction stretched(double rate) {
        return new RationalFunction(times(poleRe, rate), times(poleIm, rate), times(residueRe, rate), times(residueIm, rate),
                residueAtZero * rate, constant, proportional / rate);
    }

    /** With a resistance in ohm and an elastance in 1/F in series. */
    RationalFunction plus(double ohm, double perF) {
        return new RationalFunction(poleRe, poleIm, residueRe, residueIm, residueAtZero + perF, constant + ohm, proportional);
    }

    private static double[] times(double[] values, double factor) {
        double[] product = new double[values.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = values[i] * factor;
        }
        return product;
    }

    /** A real state-space realisation. */
    public StateSpace stateSpace() {
        return StateSpace.of(this);
    }

    @Override
    public String toString() {
        return "order " + order() + ": " + proportional + " s + " + constant + " + " + residueAtZero + " / s, poles " + poles()
                + ", residues " + residues();
    }
}
