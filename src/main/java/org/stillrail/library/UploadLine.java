package org.stillrail.library;

import java.util.List;
import org.stillrail.web.Quantity;

/**
 * What becomes of one of many files.
 *
 * @param result    in words: how it was read, or why not
 * @param warnings  of the reader
 * @param stored    the sweep it became, null where it was not stored
 * @param before    a sweep of the part that tells the same from the same bytes, null where there is none
 * @param elsewhere other sweeps from the same bytes
 * @param twinFile  an earlier file of the same upload with the same bytes, null where there is none
 */
record UploadLine(
        String fileName, String result, boolean refused, List<String> warnings, Sweep stored, Twin before, List<Twin> elsewhere, String twinFile) {

    static UploadLine read(Upload upload, Sweep stored, Twin before, List<Twin> elsewhere, String twinFile) {
        if (!upload.readable()) {
            return new UploadLine(upload.fileName(), upload.problem(), true, List.of(), null, before, elsewhere, twinFile);
        }
        double[] hz = upload.sweep().frequencyHz();
        return new UploadLine(upload.fileName(), upload.sweep().format() + ", " + hz.length + " points from " + Quantity.format(hz[0], "Hz", 3) + " to "
                + Quantity.format(hz[hz.length - 1], "Hz", 3), false, upload.sweep().warnings(), stored, before, elsewhere, twinFile);
    }
}
