package org.stillrail.library;

import java.time.LocalDate;
import java.util.UUID;
import org.stillrail.sweepfile.accuracy.InstrumentAccuracy;
import org.stillrail.sweepfile.accuracy.ShieldLoop;

/**
 * What is known of instrument and fixture beside the words of the provenance; null where nobody said.
 *
 * @param accuracy     of the instrument after calibration; {@link #USUAL} stands in
 * @param calibratedOn day of the calibration
 * @param shields      of the cables of a shunt-through measurement
 * @param portDelayS   one way, taken out of the data by port extension
 * @param openId       fixture sweep that was taken out, likewise {@code shortId} and {@code loadId}
 * @param shortId      see there
 * @param loadId       see there
 */
public record MeasurementSetup(
        InstrumentAccuracy accuracy, LocalDate calibratedOn, ShieldLoop shields, Double portDelayS, UUID openId, UUID shortId, UUID loadId) {

    public static final MeasurementSetup UNKNOWN = new MeasurementSetup(null, null, null, null, null, null, null);

    /** What a calibrated analyser of the trade reaches: 2 % of S11 and of S21, a floor of -100 dB, 1 % of Z. Common practice, no source. */
    public static final InstrumentAccuracy USUAL = new InstrumentAccuracy(0.02, 0.02, 1e-5, 0.01);

    public InstrumentAccuracy accuracyOrUsual() {
        return accuracy == null ? USUAL : accuracy;
    }
}
