package org.stillrail.sweepfile;

import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * Complex impedance over frequency as read from a file. Immutable: arrays are copied on the way in and on the way out.
 *
 * @param frequencyHz   positive, strictly ascending
 * @param resistanceOhm Re Z at each frequency
 * @param reactanceOhm  Im Z at each frequency
 * @param referenceOhm  reference resistance of the S parameters it was made from; null where none was needed
 * @param format        what was recognised, in words
 * @param warnings      sentences on what was dropped, assumed or looks wrong
 */
public record ReadSweep(double[] frequencyHz, double[] resistanceOhm, double[] reactanceOhm, Double referenceOhm,
                        String format, List<String> warnings) {

    public ReadSweep {
        if (frequencyHz.length != resistanceOhm.length || frequencyHz.length != reactanceOhm.length) {
            throw new IllegalArgumentException("A sweep of " + frequencyHz.length + " frequencies needs as many values, not "
                    + resistanceOhm.length + " resistances and " + reactanceOhm.length + " reactances");
        }
        frequencyHz = frequencyHz.clone();
        resistanceOhm = resistanceOhm.clone();
        reactanceOhm = reactanceOhm.clone();
        warnings = List.copyOf(warnings);
    }

    public int points() {
        return frequencyHz.length;
    }

    @Override
    public double[] frequencyHz() {
        return frequencyHz.clone();
    }

    @Override
    public double[] resistanceOhm() {
        return resistanceOhm.clone();
    }

    @Override
    public double[] reactanceOhm() {
        return reactanceOhm.clone();
    }

    /** The impedance in ohm as a curve. */
    public Curve impedance() {
        return new Curve(FrequencyGrid.of(frequencyHz), resistanceOhm, reactanceOhm);
    }
}
