package org.stillrail.library;

import java.time.LocalDate;

/**
 * Who measured a sweep, when, with what and at which operating point.
 *
 * @param sample             which physical piece
 * @param instrument         analyser and its calibration
 * @param fixture            how the sample was connected, the word the file reader uses: reflection, shunt-through,
 *                           series-through or impedance
 * @param fixtureName        the board or clamp
 * @param compensation       open, short, load: what was taken out
 * @param acLevelV           rms level at the sample
 * @param hoursSinceSoldering since the last heat above the Curie point; ceramics age from there
 */
public record SweepProvenance(
        String sample,
        String measuredBy,
        LocalDate measuredOn,
        String instrument,
        String fixture,
        String fixtureName,
        String compensation,
        Double acLevelV,
        double biasV,
        double temperatureC,
        Double hoursSinceSoldering,
        String note) {

    SweepProvenance ofSample(String newSample) {
        return new SweepProvenance(newSample, measuredBy, measuredOn, instrument, fixture, fixtureName, compensation, acLevelV, biasV,
                temperatureC, hoursSinceSoldering, note);
    }
}
