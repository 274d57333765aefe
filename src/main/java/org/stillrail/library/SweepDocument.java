package org.stillrail.library;

import java.util.List;

/**
 * What is kept of one measured record besides its raw bytes: provenance, how the file was read, and the impedance that
 * was read from it.
 *
 * @param format        what the reader recognised
 * @param columns       how the columns of a text file were read, null for Touchstone
 * @param referenceOhm  reference of the ports, null where the file has none
 * @param warnings      what the reader had to say
 * @param frequencyHz   ascending; the three arrays are of equal length
 */
public record SweepDocument(
        SweepProvenance provenance,
        String format,
        String columns,
        Double referenceOhm,
        List<String> warnings,
        double[] frequencyHz,
        double[] resistanceOhm,
        double[] reactanceOhm) {
}
