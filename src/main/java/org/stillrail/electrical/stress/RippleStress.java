package org.stillrail.electrical.stress;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.ripple.HarmonicCurrents;

/**
 * The ripple current of one part against its rating, each harmonic weighed by what the part may carry at its frequency:
 * {@code Ieq^2 = sum of (In / kf(fn))^2}. The rating is taken at the ambient temperature.
 *
 * @param rmsA        plain rms current
 * @param equivalentA current at the rating's own frequency that heats as much
 * @param ratedA      the rating at the ambient temperature
 * @param allowedA    what the team's rule leaves of it
 * @param notes       what was assumed, in sentences
 */
public record RippleStress(double rmsA, double equivalentA, double ratedA, double allowedA, List<String> notes) {

    public RippleStress {
        notes = List.copyOf(notes);
    }

    /** @param fundamentalHz frequency of order 1 of the currents */
    public static RippleStress of(HarmonicCurrents perPart, double fundamentalHz, RippleRating rating, double ambientC, StressRule rule) {
        double rated = rating.ratedA(ambientC);
        List<String> notes = new ArrayList<>();
        if (rating.overFrequency() == null) {
            notes.add("No multiplier over frequency is known; every harmonic counts in full.");
        } else if (!rating.overFrequency().covers(fundamentalHz)) {
            notes.add("The multiplier over frequency does not reach the switching frequency; its last value is held.");
        }
        if (rating.overTemperature() == null) {
            notes.add("No multiplier over temperature is known; the rating is taken as it stands.");
        } else if (!rating.overTemperature().covers(ambientC)) {
            notes.add("The multiplier over temperature does not reach the ambient temperature; its last value is held.");
        }
        return new RippleStress(perPart.rmsA(), perPart.equivalentA(rating::frequencyFactor), rated, rated * rule.rippleShare(), notes);
    }

    public boolean kept() {
        return equivalentA <= allowedA;
    }
}
