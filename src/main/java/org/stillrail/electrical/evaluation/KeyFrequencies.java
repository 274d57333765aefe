package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.ConverterFigures;

/**
 * The two frequencies that a bank is read at, and the bands round them.
 *
 * @param crossoverHz  where the loop's gain is 1
 * @param crossoverGiven false where nobody stated it and a tenth of the switching frequency stands in
 */
public record KeyFrequencies(double crossoverHz, boolean crossoverGiven, double switchingHz) {

    private static final double USUAL_CROSSOVER_SHARE = 0.1;

    static KeyFrequencies of(ConverterFigures converter) {
        Double wanted = converter.control() == null ? null : converter.control().crossoverHz();
        double crossover = wanted == null ? USUAL_CROSSOVER_SHARE * converter.switchingHz() : wanted;
        return new KeyFrequencies(crossover, wanted != null, converter.switchingHz());
    }

    public double dampingFromHz() {
        return crossoverHz / 3;
    }

    public double dampingToHz() {
        return 3 * crossoverHz;
    }

    public double quietFromHz() {
        return switchingHz;
    }

    public double quietToHz() {
        return 10 * switchingHz;
    }
}
