package org.stillrail.electrical.mounting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Require;

/**
 * Mounting of a part from a sweep of its lands with a short in its place. The inductance is the median of {@code X / w} where the
 * reactance is above the resistance, the resistance the median of R where it is not, or the lowest R where there is no such point.
 * A median does not mind a few bad points.
 *
 * @param path     with the inductance of the short taken away
 * @param spreadH  half of the range that the middle 80 % of {@code X / w} cover
 * @param points   how many points the inductance rests on
 * @param warnings in sentences
 */
public record ShortedLand(SeriesPath path, double spreadH, int points, List<String> warnings) {

    private static final int FEWEST = 5;
    private static final double UNEVEN = 0.1;

    public ShortedLand {
        warnings = List.copyOf(warnings);
    }

    /**
     * @param frequencyHz      ascending, positive
     * @param resistanceOhm    as long
     * @param reactanceOhm     as long
     * @param shortInductanceH of the short itself, which does not belong to the mounting; 0 where it is not known
     * @throws IllegalArgumentException where the lengths differ or fewer than {@value #FEWEST} points are inductive
     */
    public static ShortedLand of(double[] frequencyHz, double[] resistanceOhm, double[] reactanceOhm, double shortInductanceH) {
        Require.notNegative("shortInductanceH", shortInductanceH);
        int n = frequencyHz.length;
        if (resistanceOhm.length != n || reactanceOhm.length != n) {
            throw new IllegalArgumentException("frequencyHz, resistanceOhm and reactanceOhm must be equally long, not "
                    + n + ", " + resistanceOhm.length + " and " + reactanceOhm.length);
        }
        List<Double> inductances = new ArrayList<>();
        List<Double> resistances = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Require.positive("frequencyHz[" + i + "]", frequencyHz[i]);
            Require.finite("resistanceOhm[" + i + "]", resistanceOhm[i]);
            Require.finite("reactanceOhm[" + i + "]", reactanceOhm[i]);
            if (reactanceOhm[i] > Math.abs(resistanceOhm[i])) {
                inductances.add(reactanceOhm[i] / (2 * Math.PI * frequencyHz[i]));
            } else {
                resistances.add(resistanceOhm[i]);
            }
        }
        if (inductances.size() < FEWEST) {
            throw new IllegalArgumentException("Only " + inductances.size() + " points have a reactance above their resistance; "
                    + FEWEST + " are needed to read an inductance");
        }
        inductances.sort(null);
        double inductance = quantile(inductances, 0.5);
        double spread = (quantile(inductances, 0.9) - quantile(inductances, 0.1)) / 2;
        resistances.sort(null);
        double resistance = resistances.isEmpty() ? Arrays.stream(resistanceOhm).min().orElseThrow() : quantile(resistances, 0.5);
        return new ShortedLand(
                new SeriesPath(Math.max(0, resistance), Math.max(0, inductance - shortInductanceH)), spread, inductances.size(),
                warnings(inductance, spread, resistance, shortInductanceH));
    }

    private static List<String> warnings(double inductance, double spread, double resistance, double shortInductanceH) {
        List<String> warnings = new ArrayList<>();
        if (spread > UNEVEN * inductance) {
            warnings.add(String.format(Locale.ROOT, "The reactance is not in proportion to frequency: %.3g H give or take %.3g H.",
                    inductance, spread));
        }
        if (resistance < 0) {
            warnings.add("The resistance of the short comes out negative and is taken as 0; the fixture's compensation is off.");
        }
        if (shortInductanceH == 0) {
            warnings.add("The inductance of the short itself is not taken away; the mounting is a little less.");
        } else if (shortInductanceH > inductance) {
            warnings.add("The short is said to have more inductance than the sweep shows; the mounting is taken as 0.");
        }
        return warnings;
    }

    private static double quantile(List<Double> sorted, double share) {
        double place = share * (sorted.size() - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.size() - 1);
        return sorted.get(below) + (place - below) * (sorted.get(above) - sorted.get(below));
    }
}
