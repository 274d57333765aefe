package org.stillrail.bank.bench;

import java.time.LocalDate;
import org.stillrail.library.SweepDocument;

/**
 * What is kept of one record of the bench besides its raw bytes; one of the three is not null.
 *
 * @param tolerancePercent    of |Z| against which the prediction is judged, null for the others
 * @param resistancePercent   of the ESR likewise
 */
record BenchDocument(
        String measuredBy, LocalDate measuredOn, String instrument, String note, SweepDocument sweep, Double tolerancePercent,
        Double resistancePercent, BenchLoop loop, BenchTrace trace) {
}
