package org.stillrail.electrical.spread;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;

/**
 * How far one branch's parts may be from what the model says. What nobody knows is null and stays as modelled.
 *
 * @param leastDeviation   of the capacitance from nominal at delivery, such as -0.2
 * @param mostDeviation    such as 0.2; both or neither
 * @param leastResistance  smallest ESR over that of the model, above 0; null where no minimum is known
 * @param mostResistance   largest ESR over that of the model; null where no maximum is known
 * @param oldHours         age in hours since the last heat at the end of the rail's life; null leaves the referee age
 */
public record BranchSpread(
        String label, Double leastDeviation, Double mostDeviation, Double leastResistance, Double mostResistance, Double oldHours) {

    public BranchSpread {
        Objects.requireNonNull(label, "label");
        if ((leastDeviation == null) != (mostDeviation == null)) {
            throw new IllegalArgumentException("leastDeviation and mostDeviation belong together: give both or neither");
        }
        if (leastDeviation != null && !(leastDeviation > -1 && leastDeviation <= mostDeviation && mostDeviation < 10)) {
            throw new IllegalArgumentException(
                    "leastDeviation must be above -1 and at most mostDeviation, not " + leastDeviation + " with " + mostDeviation);
        }
        if (leastResistance != null) {
            Require.positive("leastResistance", leastResistance);
        }
        if (mostResistance != null) {
            Require.positive("mostResistance", mostResistance);
            if (leastResistance != null && leastResistance > mostResistance) {
                throw new IllegalArgumentException(
                        "leastResistance must be at most mostResistance, not " + leastResistance + " with " + mostResistance);
            }
        }
        if (oldHours != null) {
            Require.notNegative("oldHours", oldHours);
        }
    }
}
