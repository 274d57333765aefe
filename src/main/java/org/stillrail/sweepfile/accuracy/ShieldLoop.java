package org.stillrail.sweepfile.accuracy;

import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The ground loop of a shunt-through measurement: both cables' shields meet at the instrument, so a share of the part's current
 * returns through the shield of the receiving cable and its drop adds to what is measured. With shields R1, R2 and the
 * inductance L round the loop (of both shields and of chokes put over the cables), each shield fully coupled to its inner
 * conductor,
 * <pre>
 * Z measured = Z + R1 R2 / (R1 + R2 + j w L)
 * </pre>
 * Derived here from the mesh equations; the test compares it with a nodal solution of the whole set-up. At low frequency the
 * error is both shields in parallel; it falls above {@code (R1 + R2) / (2 pi L)}.
 *
 * @param sourceShieldOhm   shield of the cable from the source, connectors included; above 0
 * @param receiverShieldOhm likewise of the cable to the receiver
 * @param loopInductanceH   zero or positive
 */
public record ShieldLoop(double sourceShieldOhm, double receiverShieldOhm, double loopInductanceH) {

    public ShieldLoop {
        require("sourceShieldOhm", sourceShieldOhm, sourceShieldOhm > 0);
        require("receiverShieldOhm", receiverShieldOhm, receiverShieldOhm > 0);
        require("loopInductanceH", loopInductanceH, loopInductanceH >= 0);
    }

    /** What is added to the impedance at one frequency, in ohm. */
    public Complex errorOhm(double hz) {
        Complex loop = new Complex(sourceShieldOhm + receiverShieldOhm, 2 * Math.PI * hz * loopInductanceH);
        return loop.reciprocal().times(sourceShieldOhm * receiverShieldOhm);
    }

    public Curve errorOn(FrequencyGrid grid) {
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        for (int i = 0; i < r.length; i++) {
            Complex error = errorOhm(grid.hz(i));
            r[i] = error.re();
            x[i] = error.im();
        }
        return new Curve(grid, r, x);
    }

    /** Above this frequency the error falls; infinite without inductance. */
    public double cornerHz() {
        return (sourceShieldOhm + receiverShieldOhm) / (2 * Math.PI * loopInductanceH);
    }

    private static void require(String name, double value, boolean inRange) {
        if (!inRange || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " is out of range: " + value);
        }
    }
}
