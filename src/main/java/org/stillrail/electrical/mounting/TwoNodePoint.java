package org.stillrail.electrical.mounting;

import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.curve.Complex;

/**
 * A bank at two nodes, at one frequency. With the admittances Ya at the converter, Yb at the load and the path's impedance Zp,
 * {@code D = Ya + Yb + Ya Yb Zp}: {@code Zcc = (1 + Yb Zp) / D}, {@code Zll = (1 + Ya Zp) / D}, {@code Zcl = 1 / D}. Circuit theory.
 *
 * @param atConverter Zcc: voltage at the converter for one ampere into the converter's node
 * @param atLoad      Zll: voltage at the load for one ampere into the load's node
 * @param transfer    Zcl: voltage at either node for one ampere into the other one
 */
public record TwoNodePoint(double frequencyHz, Complex atConverter, Complex atLoad, Complex transfer) {

    /** @throws IllegalArgumentException where the circuit rings without loss at just this frequency */
    static TwoNodePoint of(double hz, Complex near, Complex far, Complex path) {
        Complex determinant = near.plus(far).plus(near.times(far).times(path));
        TwoNodePoint point = new TwoNodePoint(
                hz,
                Complex.ONE.plus(far.times(path)).over(determinant),
                Complex.ONE.plus(near.times(path)).over(determinant),
                determinant.reciprocal());
        if (!Double.isFinite(point.transfer.re()) || !Double.isFinite(point.transfer.im())
                || !Double.isFinite(point.atLoad.re()) || !Double.isFinite(point.atConverter.re())) {
            throw new IllegalArgumentException("The bank resonates without loss at " + hz + " Hz");
        }
        return point;
    }

    /**
     * Loop gain of a buck in voltage mode with its sense point at a node: {@code T = G Zs / (Zout + Zcc)}, Zs = Zcc or Zcl.
     *
     * @param gain   G, from the sensed voltage to the mean voltage of the switch node, its minus left out
     * @param source Zout = R + sL of the inductor
     */
    public Complex loopGain(Node sense, Complex gain, Complex source) {
        return gain.times(sense == Node.LOAD ? transfer : atConverter).over(source.plus(atConverter));
    }

    /** Impedance that the load sees with the loop closed and the sense point at a node; arguments as in {@link #loopGain}. */
    public Complex closedAtLoad(Node sense, Complex gain, Complex source) {
        Complex onePlusT = Complex.ONE.plus(loopGain(sense, gain, source));
        Complex sum = source.plus(atConverter);
        if (sense == Node.LOAD) {
            return atLoad.minus(transfer.times(transfer).over(sum)).over(onePlusT);
        }
        // With one ampere drawn at the load: voltage at the converter, then the inductor's current, then the voltage at the load.
        Complex converterV = source.over(sum).times(transfer).over(onePlusT).times(-1);
        Complex inductorA = transfer.minus(gain.times(converterV)).over(sum);
        return atLoad.minus(transfer.times(inductorA));
    }
}
