package org.stillrail.sweepfile.accuracy;

import java.util.Optional;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.sweepfile.Fixture;

/**
 * The impedances that a fixture measures to within a limit with a given instrument. Taken for a resistance, for which the error is
 * largest.
 */
public record ImpedanceWindow(double lowestOhm, double highestOhm) {

    /** Ends of the search; an end of the window that lies beyond them stands at them. */
    static final double LEAST_OHM = 1e-9;
    static final double MOST_OHM = 1e12;

    private static final int STEPS = 200;

    /**
     * @param limit largest relative error of |Z| (0.1 is ten per cent)
     * @return empty where no impedance is measured so well
     */
    public static Optional<ImpedanceWindow> of(Fixture fixture, double referenceOhm, InstrumentAccuracy accuracy, double limit) {
        double best = best(fixture, referenceOhm, accuracy);
        if (error(fixture, best, referenceOhm, accuracy) > limit) {
            return Optional.empty();
        }
        return Optional.of(new ImpedanceWindow(
                edge(fixture, referenceOhm, accuracy, limit, best, LEAST_OHM),
                edge(fixture, referenceOhm, accuracy, limit, best, MOST_OHM)));
    }

    /** The error falls and then rises with |Z|: thirds of the range are dropped where it is higher. */
    private static double best(Fixture fixture, double referenceOhm, InstrumentAccuracy accuracy) {
        double low = Math.log(LEAST_OHM);
        double high = Math.log(MOST_OHM);
        for (int i = 0; i < STEPS; i++) {
            double third = (high - low) / 3;
            double left = error(fixture, Math.exp(low + third), referenceOhm, accuracy);
            double right = error(fixture, Math.exp(high - third), referenceOhm, accuracy);
            if (left <= right) {
                high -= third;
            } else {
                low += third;
            }
        }
        return Math.exp((low + high) / 2);
    }

    private static double edge(Fixture fixture, double referenceOhm, InstrumentAccuracy accuracy, double limit, double inside,
                               double outside) {
        if (error(fixture, outside, referenceOhm, accuracy) <= limit) {
            return outside;
        }
        double good = Math.log(inside);
        double bad = Math.log(outside);
        for (int i = 0; i < STEPS; i++) {
            double middle = (good + bad) / 2;
            if (error(fixture, Math.exp(middle), referenceOhm, accuracy) <= limit) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return Math.exp(good);
    }

    private static double error(Fixture fixture, double ohm, double referenceOhm, InstrumentAccuracy accuracy) {
        return ErrorGrowth.errorOhm(fixture, new Complex(ohm, 0), referenceOhm, accuracy) / ohm;
    }
}
