package org.stillrail.electrical.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.capacitor.Require;

/**
 * Bringing an empty bank up to its voltage in a straight ramp: {@code I = C(v) dv/dt}. The current is largest where the
 * capacitance is, which for ceramics is at the very start, without bias.
 *
 * @param peakChargingA        largest charging current of the ramp, load not counted
 * @param peakAtV              the voltage at which it flows
 * @param meanChargingA        charge over ramp time
 * @param availableA           what the current limit leaves for charging; null without a limit
 * @param largestBankShare     largest bank that the ramp may charge, over this one, at the same mix of parts; null without a limit
 * @param largestCapacitanceF  its capacitance at {@code peakAtV}; null without a limit
 * @param shortestRampS        the shortest straight ramp for this bank within the limit; null without a limit or where it never ends
 * @param atLimitS             time to charge this bank with all the current that the limit leaves; null likewise
 * @param notes                in sentences
 */
public record StartUp(
        double chargeC, double energyJ, double peakChargingA, double peakAtV, double meanChargingA, Double availableA,
        Double largestBankShare, Double largestCapacitanceF, Double shortestRampS, Double atLimitS, List<String> notes) {

    public StartUp {
        notes = List.copyOf(notes);
    }

    /**
     * @param rampS         from 0 V to {@code outputV}
     * @param currentLimitA of the converter, all phases together; null where not known
     * @param loadA         drawn during the ramp
     * @param halfRippleA   half the peak-to-peak ripple of the limited current, 0 where the limit is on its mean
     */
    public static StartUp of(BankCharge bank, double outputV, double rampS, Double currentLimitA, double loadA, double halfRippleA) {
        Require.positive("outputV", outputV);
        Require.positive("rampS", rampS);
        Require.notNegative("loadA", loadA);
        Require.notNegative("halfRippleA", halfRippleA);
        double at = bank.voltageOfLargestCapacitance(outputV);
        double largestF = bank.capacitanceF(at);
        double peak = largestF * outputV / rampS;
        double charge = bank.chargeC(outputV);
        List<String> notes = new ArrayList<>();
        Double available = null;
        Double share = null;
        Double shortest = null;
        Double atLimit = null;
        if (currentLimitA == null) {
            notes.add("No current limit is known; whether the converter can start into the bank is not.");
        } else {
            Require.positive("currentLimitA", currentLimitA);
            available = Math.max(0, currentLimitA - loadA - halfRippleA);
            share = available / peak;
            if (available > 0) {
                shortest = largestF * outputV / available;
                atLimit = charge / available;
            }
            notes.add(words(peak, available, share, shortest));
        }
        return new StartUp(charge, bank.energyJ(outputV), peak, at, charge / rampS, available, share,
                share == null ? null : (Double) (share * largestF), shortest, atLimit, notes);
    }

    private static String words(double peak, double available, double share, Double shortest) {
        if (shortest == null) {
            return "The load and the ripple alone take up the current limit; nothing is left to charge the bank.";
        }
        return share >= 1
                ? String.format(Locale.ROOT, "The ramp needs %.3g A of the %.3g A that the current limit leaves; a bank %.3g times as large"
                        + " would still start.", peak, available, share)
                : String.format(Locale.ROOT, "The ramp needs %.3g A and the current limit leaves %.3g A: the bank is too large for it,"
                        + " and a ramp of %.3g s or more is needed.", peak, available, shortest);
    }

    /** null without a current limit. */
    public Boolean starts() {
        return largestBankShare == null ? null : (Boolean) (largestBankShare >= 1);
    }
}
