package org.stillrail.electrical.stress;

import java.util.ArrayList;
import java.util.List;

/**
 * All that one part of a branch has to bear, beside what it may. What cannot be told is null, and {@code notes} say why.
 *
 * @param ambientC  of the air round it
 * @param ripple    null without a ripple rating
 * @param heat      null without a thermal resistance or a rated rise
 * @param allowedC  warmest core that the team's rule allows; null without a rated temperature
 */
public record PartStress(
        double ambientC, StressRule rule, RippleStress ripple, SelfHeating heat, Double allowedC, LifeEstimate life, ReverseVoltage reverse,
        List<String> notes) {

    public PartStress {
        notes = List.copyOf(notes);
    }

    public static PartStress of(PartRatings ratings, StressRules rules, PartConditions conditions) {
        StressRule rule = rules.of(ratings.technology());
        List<String> notes = new ArrayList<>();
        RippleStress ripple = null;
        if (ratings.ripple() == null) {
            notes.add("No ripple rating is known.");
        } else {
            ripple = RippleStress.of(conditions.currents(), conditions.fundamentalHz(), ratings.ripple(), conditions.ambientC(), rule);
            notes.addAll(ripple.notes());
        }
        SelfHeating heat = heat(ratings, ripple, conditions);
        notes.add(heat == null ? "No thermal resistance is known and none can be estimated." : heat.sentence());
        if (heat != null && heat.estimated()) {
            notes.add("The thermal resistance is " + ratings.thermal().source() + ".");
        }
        Double share = ratings.ratedV() == null ? null : (Double) (Math.abs(conditions.appliedV()) / ratings.ratedV());
        LifeEstimate life = LifeEstimate.of(ratings.technology(), ratings.life(), heat, share);
        double temperatureC = heat == null || heat.runsAway() ? conditions.ambientC() : heat.coreC();
        ReverseVoltage reverse = ReverseVoltage.of(
                ratings.technology(), ratings.ratedV(), ratings.reverseV(), temperatureC, conditions.lowestV());
        return new PartStress(conditions.ambientC(), rule, ripple, heat, rule.allowedC(ratings.ratedTemperatureC()), life, reverse, notes);
    }

    private static SelfHeating heat(PartRatings ratings, RippleStress ripple, PartConditions conditions) {
        if (ratings.thermal() != null) {
            HeatingCurrent current = HeatingCurrent.of(conditions.currents(), conditions.fundamentalHz());
            return SelfHeating.of(conditions.ambientC(), ratings.thermal(),
                    new KelvinSteps(conditions.ambientC(), t -> current.dissipationW(conditions.partAtC().apply(t))));
        }
        if (ripple != null && ratings.life() != null && ratings.life().coreRiseK() > 0) {
            return SelfHeating.ofRating(
                    conditions.ambientC(), ratings.life().coreRiseK(), ripple.equivalentA(), ratings.ripple().currentA());
        }
        return null;
    }

    /** null where the core's temperature or the limit is not known. */
    public Boolean coolEnough() {
        if (heat != null && heat.runsAway()) {
            return false;
        }
        return heat == null || allowedC == null ? null : (Boolean) (heat.coreC() <= allowedC);
    }
}
