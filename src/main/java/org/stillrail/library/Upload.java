package org.stillrail.library;

import org.stillrail.document.Sha256;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.TextPreview;

/**
 * A file in hand with what the form says of it, read but not stored: what the preview shows and what is stored at the end.
 *
 * @param preview null for Touchstone
 * @param mapping null for Touchstone
 * @param sweep   with the fixture taken out; null where it cannot be read as the form says
 * @param setup   null likewise
 * @param problem why, or null
 */
record Upload(
        String fileName, byte[] bytes, String sha256, TextPreview preview, ColumnMapping mapping, ReadSweep sweep, MeasurementSetup setup,
        String problem) {

    static Upload refused(String name, byte[] bytes, String problem) {
        return new Upload(name, bytes, Sha256.of(bytes), null, null, null, null, problem);
    }

    public boolean readable() {
        return sweep != null;
    }

    /** @throws NullPointerException where it is not readable */
    SweepDocument document(SweepProvenance provenance) {
        return new SweepDocument(provenance, sweep.format(), mapping == null ? null : mapping.toText(), sweep.referenceOhm(), sweep.warnings(),
                sweep.frequencyHz(), sweep.resistanceOhm(), sweep.reactanceOhm(), setup);
    }
}
