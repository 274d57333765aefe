package org.stillrail.library;

import java.util.List;
import org.stillrail.web.Quantity;

/**
 * What becomes of one of many files.
 *
 * @param result   in words: how it was read, or why not
 * @param warnings of the reader
 * @param stored   the sweep it became, null where it was not stored
 * @param same     a sweep of the same bytes from before, null where there is none
 */
record UploadLine(String fileName, String result, boolean refused, List<String> warnings, Sweep stored, Sweep same) {

    static UploadLine read(Upload upload, Sweep stored, Sweep same) {
        if (!upload.readable()) {
            return new UploadLine(upload.fileName(), upload.problem(), true, List.of(), null, same);
        }
        double[] hz = upload.sweep().frequencyHz();
        return new UploadLine(upload.fileName(), upload.sweep().format() + ", " + hz.length + " points from " + Quantity.format(hz[0], "Hz", 3) + " to "
                + Quantity.format(hz[hz.length - 1], "Hz", 3), false, upload.sweep().warnings(), stored, same);
    }
}
