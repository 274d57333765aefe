package org.stillrail.electrical.bench;

import org.stillrail.electrical.bank.SeriesPath;

/**
 * The mounting of one branch before and after.
 *
 * @param resistanceSigmaOhm one standard error by the residual that was left; infinite where the sweep does not tell it
 * @param inductanceSigmaH   likewise
 * @param atBound            whether either stands at an end of what is allowed
 */
public record FittedMounting(
        String label, SeriesPath before, SeriesPath after, double resistanceSigmaOhm, double inductanceSigmaH, boolean atBound) {

    public boolean resistanceTold() {
        return resistanceSigmaOhm < Math.max(after.resistanceOhm(), before.resistanceOhm());
    }

    public boolean inductanceTold() {
        return inductanceSigmaH < Math.max(after.inductanceH(), before.inductanceH());
    }
}
