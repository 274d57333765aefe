package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.ConverterFigures;

/**
 * The two frequencies that a bank is read at, and the bands round them.
 *
 * @param crossoverHz    where the loop's gain is 1
 * @param crossoverGiven false where nobody stated it, the loop does not tell, and a tenth of the switching frequency stands in
 */
public record KeyFrequencies(double crossoverHz, boolean crossoverGiven, double switchingHz) {

    private static final double USUAL_CROSSOVER_SHARE = 0.1;

    static KeyFrequencies of(ConverterFigures converter) {
        return of(converter, null);
    }

    /** @param computedHz the crossover of the loop itself, null where it is not known */
    static KeyFrequencies of(ConverterFigures converter, Double computedHz) {
        Double wanted = converter.control() == null ? null : converter.control().crossoverHz();
        Double known = computedHz == null ? wanted : computedHz;
        double crossover = known == null ? USUAL_CROSSOVER_SHARE * converter.switchingHz() : known;
        return new KeyFrequencies(crossover, known != null, converter.switchingHz());
    }

    public double dampingFromHz() {
        return crossoverHz / LoopBand.SPREAD;
    }

    public double dampingToHz() {
        return LoopBand.SPREAD * crossoverHz;
    }

    public double quietFromHz() {
        return switchingHz;
    }

    public double quietToHz() {
        return QuietHarmonic.ORDERS * switchingHz;
    }
}
