package org.stillrail.electrical.bank;

import java.util.Objects;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;

/**
 * What lies between the converter's node and the load's where a bank has two nodes.
 *
 * @param path  plane, bead or second inductor, there and back; not nothing
 * @param sense where the converter senses its output
 * @param load  capacitance that is fixed at the load, such as a package's; null for none
 */
public record Distance(SeriesPath path, Node sense, SeriesRlc load) {

    public Distance {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(sense, "sense");
        if (path.resistanceOhm() == 0 && path.inductanceH() == 0) {
            throw new IllegalArgumentException("A path between converter and load needs a resistance or an inductance");
        }
    }

    /**
     * The impedances between which the path stands, at one frequency.
     *
     * @param near admittance of what stands at the converter
     * @param far  admittance of the branches at the load; the fixed capacitance comes on top
     * @throws LosslessResonanceException where the circuit rings without loss at just this frequency
     */
    public TwoNodePoint at(double hz, Complex near, Complex far) {
        double omega = 2 * Math.PI * hz;
        Complex all = far;
        if (load != null) {
            ImpedancePoint z = load.at(hz);
            all = far.plus(new Complex(z.resistanceOhm(), z.reactanceOhm()).reciprocal());
        }
        return TwoNodePoint.of(hz, near, all, new Complex(path.resistanceOhm(), omega * path.inductanceH()));
    }
}
