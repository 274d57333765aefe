package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.BankCurves;
import org.stillrail.electrical.curve.Curve;

/**
 * The bank at one frequency.
 *
 * @param magnitudeOhm  |Z| of the bank
 * @param resistanceOhm Re Z, the bank's ESR there
 * @param shares        |Ibranch / Itotal| of each branch
 */
public record Reading(double frequencyHz, double magnitudeOhm, double resistanceOhm, double reactanceOhm, List<Double> shares) {

    /** From curves on a grid of this one frequency. */
    static Reading of(BankCurves curves) {
        Curve z = curves.bank();
        return new Reading(z.grid().startHz(), z.magnitude(0), z.real(0), z.imaginary(0),
                curves.shares().stream().map(share -> share.magnitude(0)).toList());
    }
}
