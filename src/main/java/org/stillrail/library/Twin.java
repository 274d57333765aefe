package org.stillrail.library;

import java.util.Arrays;
import org.stillrail.sweepfile.ReadSweep;

/**
 * A stored sweep that came from the same bytes.
 *
 * @param partNumber of the part that it is a sweep of
 * @param samePart   whether that is the part in hand
 */
record Twin(Sweep sweep, String partNumber, boolean samePart) {

    /** Whether it tells the same of the same part: then storing it once more adds nothing. */
    boolean repeats(ReadSweep read) {
        SweepDocument document = sweep.document();
        return samePart && Arrays.equals(document.frequencyHz(), read.frequencyHz())
                && Arrays.equals(document.resistanceOhm(), read.resistanceOhm()) && Arrays.equals(document.reactanceOhm(), read.reactanceOhm());
    }
}
