package org.stillrail.electrical.converter;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.ImpedancePoint;

/**
 * The bank's own share of the loop's phase. An ideal capacitance lags by 90 deg; what is missing to that lag is lead that the ESR gives.
 * Where it is 45 deg the resistance equals the reactance: the ESR zero at its true place, with the ESR as it is at that frequency. For
 * one capacitor with constant R and C that is {@code 1 / (2 pi R C)} (textbooks).
 */
public final class BankPhase {

    private static final int POINTS_PER_DECADE = 200;
    private static final int HALVINGS = 60;
    private static final double ZERO_LEAD_DEG = 45;

    private BankPhase() {
    }

    /** Lead over an ideal capacitance at a frequency: 0 to 180 deg, 90 where the bank is resistive. */
    public static double leadDeg(Bank bank, double hz) {
        ImpedancePoint z = bank.at(hz);
        return 90 + Math.toDegrees(Math.atan2(z.reactanceOhm(), z.resistanceOhm()));
    }

    /** The lowest frequency in a range where the lead rises through 45 deg, null if there is none. */
    public static Double esrZeroHz(Bank bank, double startHz, double stopHz) {
        int points = (int) Math.ceil(POINTS_PER_DECADE * Math.log10(stopHz / startHz));
        double step = Math.log(stopHz / startHz) / points;
        for (int i = 0; i < points; i++) {
            double low = Math.log(startHz) + i * step;
            double high = low + step;
            if (leadDeg(bank, Math.exp(low)) < ZERO_LEAD_DEG && leadDeg(bank, Math.exp(high)) >= ZERO_LEAD_DEG) {
                for (int k = 0; k < HALVINGS; k++) {
                    double middle = (low + high) / 2;
                    if (leadDeg(bank, Math.exp(middle)) < ZERO_LEAD_DEG) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                return Math.exp((low + high) / 2);
            }
        }
        return null;
    }
}
