package org.stillrail.library;

import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * What is kept of one measured record besides its raw bytes: provenance, how the file was read, and the impedance that
 * was read from it.
 *
 * @param format        what the reader recognised
 * @param columns       how the columns of a text file were read, null for Touchstone
 * @param referenceOhm  reference of the ports, null where the file has none
 * @param warnings      what the reader had to say
 * @param frequencyHz   ascending; the three arrays are of equal length
 * @param setup         of instrument and fixture, {@link MeasurementSetup#UNKNOWN} where nobody said
 */
public record SweepDocument(
        SweepProvenance provenance,
        String format,
        String columns,
        Double referenceOhm,
        List<String> warnings,
        double[] frequencyHz,
        double[] resistanceOhm,
        double[] reactanceOhm,
        MeasurementSetup setup) {

    public SweepDocument {
        setup = setup == null ? MeasurementSetup.UNKNOWN : setup;
    }

    public Curve impedance() {
        return new Curve(FrequencyGrid.of(frequencyHz), resistanceOhm, reactanceOhm);
    }
}
