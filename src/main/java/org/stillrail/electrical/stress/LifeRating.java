package org.stillrail.electrical.stress;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;

/**
 * The life that a datasheet promises.
 *
 * @param hours        at {@code temperatureC}
 * @param temperatureC of the air round the part
 * @param coreRiseK    how much warmer its core is in that test by the ripple current; 0 where the test is without ripple or nobody
 *                     says, which is on the safe side
 * @param voltage      what a lower voltage adds
 */
public record LifeRating(double hours, double temperatureC, double coreRiseK, VoltageTerm voltage) {

    /** How life goes with voltage below the rated one. */
    public enum VoltageTerm {
        /** Not at all: the safe side, and the rule for small parts. */
        NONE,
        /** {@code 4.3 - 3.3 V / Vrated}, for large cans of wet aluminium. */
        LARGE_CAN;

        double factor(double voltageShare) {
            return this == NONE ? 1 : 4.3 - 3.3 * voltageShare;
        }
    }

    public LifeRating {
        Require.positive("hours", hours);
        Require.finite("temperatureC", temperatureC);
        Require.notNegative("coreRiseK", coreRiseK);
        Objects.requireNonNull(voltage, "voltage");
    }

    public static LifeRating of(double hours, double temperatureC) {
        return new LifeRating(hours, temperatureC, 0, VoltageTerm.NONE);
    }

    double coreC() {
        return temperatureC + coreRiseK;
    }
}
