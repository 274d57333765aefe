package org.stillrail.electrical.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;

/**
 * Emptying a bank through a resistor: {@code t = R integral of C(v) / v dv} from the charged to the safe voltage, which is
 * {@code R C ln(V / Vsafe)} for a constant C.
 *
 * @param timeS         0 where the bank is at or below the safe voltage from the start
 * @param bleederPeakW  heat in the bleeder at the charged voltage
 * @param notes         in sentences, the caution last
 */
public record Bleed(
        double chargedV, SafeVoltage safe, double bleederOhm, double timeS, double bleederPeakW, double energyJ, List<String> notes) {

    /** Stands beside every figure of stored energy. */
    public static final String CAUTION = "A charged bank can burn, spark and start fires, and electrolytic parts that are reversed or overloaded"
            + " may vent or burst. Measure before touching, observe polarity, never short the terminals, wear eye protection,"
            + " follow the local codes and leave the work to qualified people. A resistor can fail: a calculated time is no proof.";

    private static final double HIGH_V = 100;
    private static final double SHOCK_J = 10;
    private static final double BURN_J = 100;

    public Bleed {
        notes = List.copyOf(notes);
    }

    /** @param safe null for {@link SafeVoltage#defaultFrom} */
    public static Bleed of(BankCharge bank, double chargedV, double bleederOhm, SafeVoltage safe) {
        Require.positive("chargedV", chargedV);
        Require.positive("bleederOhm", bleederOhm);
        Objects.requireNonNull(bank, "bank");
        SafeVoltage target = safe == null ? SafeVoltage.defaultFrom(chargedV) : safe;
        double time = chargedV <= target.volts() ? 0 : bleederOhm * bank.bleedF(chargedV, target.volts());
        double energy = bank.energyJ(chargedV);
        List<String> notes = new ArrayList<>();
        notes.add(String.format(Locale.ROOT, "Bled to %.3g V: %s.", target.volts(), target.source()));
        if (chargedV >= HIGH_V && energy >= SHOCK_J) {
            notes.add("At 100 V and 10 J or more a capacitor counts as a shock hazard"
                    + " (classification of the U.S. Department of Energy's laboratories, seen on a public page).");
        } else if (chargedV < HIGH_V && energy > BURN_J) {
            notes.add("Above 100 J a capacitor below 100 V counts as a burn hazard"
                    + " (classification of the U.S. Department of Energy's laboratories, seen on a public page).");
        }
        notes.add(CAUTION);
        return new Bleed(chargedV, target, bleederOhm, time, chargedV * chargedV / bleederOhm, energy, notes);
    }
}
