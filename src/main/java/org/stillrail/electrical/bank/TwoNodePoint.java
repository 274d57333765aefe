package org.stillrail.electrical.bank;

import org.stillrail.electrical.curve.Complex;

/**
 * The open-circuit impedances of a bank at two nodes, at one frequency, and what a converter's loop makes of them.
 *
 * @param atConverter Zcc: voltage at the converter for one ampere into the converter's node
 * @param atLoad      Zll: voltage at the load for one ampere into the load's node
 * @param transfer    Zcl: voltage at either node for one ampere into the other one
 */
public record TwoNodePoint(Complex atConverter, Complex atLoad, Complex transfer) {

    /** @throws LosslessResonanceException where the circuit rings without loss at just this frequency */
    static TwoNodePoint of(double hz, Complex near, Complex far, Complex path) {
        Complex determinant = near.plus(far).plus(near.times(far).times(path));
        TwoNodePoint point = new TwoNodePoint(
                Complex.ONE.plus(far.times(path)).over(determinant),
                Complex.ONE.plus(near.times(path)).over(determinant),
                determinant.reciprocal());
        if (!isFinite(point.transfer) || !isFinite(point.atLoad) || !isFinite(point.atConverter)) {
            throw new LosslessResonanceException("The bank", hz);
        }
        return point;
    }

    private static boolean isFinite(Complex z) {
        return Double.isFinite(z.re()) && Double.isFinite(z.im());
    }

    /** Zll with an inductor of this impedance at the converter's node; null for a converter that is a current source. */
    public Complex openAtLoad(Complex source) {
        return source == null ? atLoad : atLoad.minus(transfer.times(transfer).over(source.plus(atConverter)));
    }

    /**
     * Impedance that the load sees with the loop closed, of which the sense point's own Zs is Zll or Zcl and its Zcs, for one ampere into the
     * converter's node, Zcl or Zcc: {@code Zll - Zcl^2 / ((Zout + Zcc) (1 + T)) - Zcl Zs T / ((Zcs + R) (1 + T))}. Derived from the nodal
     * equations with the error {@code -vs - R iL}. Where the load is sensed without a load line it is the open one over 1 + T.
     *
     * @param loopGain    T, the summing minus left out
     * @param source      Zout = R + sL of the inductor; null for a converter that is a current source
     * @param loadLineOhm R: the set-point falls by this times the inductor's current
     */
    public Complex closedAtLoad(Node sense, Complex loopGain, Complex source, double loadLineOhm) {
        Complex onePlusT = Complex.ONE.plus(loopGain);
        Complex droop = new Complex(loadLineOhm, 0);
        Complex fedBack = (sense == Node.LOAD ? transfer : atConverter).plus(droop);
        // What an endless gain leaves of it, written so that nothing cancels where the load is sensed.
        Complex rest = sense == Node.LOAD ? atLoad.times(droop) : atLoad.times(fedBack).minus(transfer.times(transfer));
        Complex left = atLoad.times(fedBack).plus(loopGain.times(rest)).over(fedBack.times(onePlusT));
        return source == null ? left : left.minus(transfer.times(transfer).over(source.plus(atConverter).times(onePlusT)));
    }
}
