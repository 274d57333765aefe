package org.stillrail.electrical.quality;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Whether the calibration was fresh when the sweep was taken. */
public final class CalibrationFinding {

    /** A day: connectors and temperature move an analyser within hours. Common practice, no source. */
    public static final int MOST_DAYS = 1;

    private CalibrationFinding() {
    }

    /** @param calibratedOn null where nobody said, which is no finding */
    public static Optional<Finding> of(LocalDate calibratedOn, LocalDate measuredOn) {
        if (calibratedOn == null || measuredOn == null) {
            return Optional.empty();
        }
        long days = ChronoUnit.DAYS.between(calibratedOn, measuredOn);
        if (days >= 0 && days <= MOST_DAYS) {
            return Optional.empty();
        }
        String text = days < 0
                ? "The calibration is dated after the measurement."
                : "The calibration was " + days + " days old when the sweep was taken; more than " + MOST_DAYS + " is stale.";
        return Optional.of(new Finding(FindingKind.STALE_CALIBRATION, text, List.of()));
    }
}
