package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.ripple.PeriodicCurrent;

/**
 * One harmonic of the switching frequency against the quiet band's mask. The harmonics share the ripple limit among
 * themselves in proportion to {@code sqrt(n) In}, so that together they cannot exceed it whatever their phases:
 *
 * <pre>
 * limit(n) = (Vpp / 2) sqrt(n) In / sum(sqrt(k) Ik) / In = sqrt(n) Vpp / (2 sum(sqrt(k) Ik))     k = 1 .. 10
 * </pre>
 *
 * The mask rises half as fast as an inductance does. Derived here; the exponent is a choice.
 *
 * @param currentA     amplitude of the converter's current
 * @param limitOhm     largest |Z|
 * @param impedanceOhm |Z| of the bank; in a bank at two nodes from the converter to the load
 */
public record QuietHarmonic(int order, double frequencyHz, double currentA, double limitOhm, double impedanceOhm) {

    static final int ORDERS = 10;
    /** A harmonic with less than this of the largest current is a residue of rounding, as between interleaved phases. */
    private static final double NO_CURRENT = 1e-9;

    /** Those of order 1 to 10 that have a current, ascending; none where phases cancel all of them. */
    static List<QuietHarmonic> of(Bank bank, PeriodicCurrent current, double ripplePeakToPeakV) {
        double[] amplitudes = current.waveform().amplitudesA(ORDERS);
        BankResponse response = bank.response(Node.CONVERTER, Node.LOAD);
        double weighted = 0;
        double largest = 0;
        for (int i = 0; i < ORDERS; i++) {
            weighted += Math.sqrt(i + 1) * amplitudes[i];
            largest = Math.max(largest, amplitudes[i]);
        }
        List<QuietHarmonic> harmonics = new ArrayList<>();
        for (int i = 0; i < ORDERS; i++) {
            if (amplitudes[i] > NO_CURRENT * largest) {
                double hz = (i + 1) * current.frequencyHz();
                harmonics.add(new QuietHarmonic(i + 1, hz, amplitudes[i], Math.sqrt(i + 1) * ripplePeakToPeakV / (2 * weighted),
                        Math.sqrt(response.at(hz).squaredMagnitude())));
            }
        }
        return List.copyOf(harmonics);
    }

    double margin() {
        return (limitOhm - impedanceOhm) / limitOhm;
    }
}
