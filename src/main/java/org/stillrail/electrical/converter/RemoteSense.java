package org.stillrail.electrical.converter;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedancePoint;

/**
 * From the converter's node to a sense point at the load: the divider {@code Zb / (Zb + Zp)} of the path and what stands beyond
 * it. Both are passive, so the phases of Zb and of Zb + Zp each stay within -90 .. 90 deg and need no unwrapping.
 */
final class RemoteSense {

    /** @param imaginary Im (1 + Yb Zp); changes sign at the resonance of the path with what stands beyond it */
    record Point(double magnitude, double phaseDeg, double imaginary) {
    }

    private static final Point NOTHING_BEYOND = new Point(1, 0, 0);

    private final Bank beyond;
    private final SeriesPath path;

    private RemoteSense(Bank beyond, SeriesPath path) {
        this.beyond = beyond;
        this.path = path;
    }

    /** Null where the converter's node is sensed, or there is only one. */
    static RemoteSense of(Bank bank) {
        return bank.distance() == null || bank.distance().sense() == Node.CONVERTER ? null
                : new RemoteSense(bank.beyondPath(), bank.distance().path());
    }

    Point at(double hz) {
        if (beyond == null) {
            return NOTHING_BEYOND;
        }
        double reactance = 2 * Math.PI * hz * path.inductanceH();
        double g = 0;
        double b = 0;
        for (Branch branch : beyond.branches()) {
            ImpedancePoint z = branch.at(hz);
            double squared = z.squaredMagnitude();
            if (squared == 0) {
                return new Point(0, -Math.toDegrees(Math.atan2(reactance, path.resistanceOhm())), Double.POSITIVE_INFINITY);
            }
            g += z.resistanceOhm() / squared;
            b -= z.reactanceOhm() / squared;
        }
        double squared = g * g + b * b;
        if (squared == 0) {
            return NOTHING_BEYOND;
        }
        double re = 1 + g * path.resistanceOhm() - b * reactance;
        double im = g * reactance + b * path.resistanceOhm();
        double phase = -Math.atan2(b, g) - Math.atan2(reactance - b / squared, path.resistanceOhm() + g / squared);
        return new Point(1 / Math.hypot(re, im), Math.toDegrees(phase), im);
    }
}
