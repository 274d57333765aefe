package org.stillrail.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.web.multipart.MultipartFile;
import org.stillrail.document.Sha256;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.sweepfile.SweepReader;
import org.stillrail.sweepfile.TextPreview;
import org.stillrail.web.Form;

/**
 * A file in hand with what the form says of it, read but not stored: what the preview shows and what is stored at the end.
 *
 * @param preview null for Touchstone
 * @param mapping null for Touchstone
 * @param sweep   null where it cannot be read as the form says
 * @param problem why, or null
 */
record Upload(String fileName, byte[] bytes, String sha256, TextPreview preview, ColumnMapping mapping, ReadSweep sweep, String problem) {

    private static final int MOST_BLOCKS = 10_000;

    /** Fills the form's column fields with the reader's proposal where the file is new to the form. */
    static Upload read(MultipartFile file, Form form) {
        String name = file == null || file.getOriginalFilename() == null ? "" : nameOnly(file.getOriginalFilename());
        if (file == null || name.isEmpty()) {
            return refused(name, new byte[0], "Choose a file first");
        }
        byte[] bytes;
        try {
            bytes = file.getBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String sha256 = Sha256.of(bytes);
        TextPreview preview = null;
        ColumnMapping mapping = null;
        try {
            Fixture fixture = Fixture.of(form.get("fixture") == null ? "" : form.get("fixture"));
            if (!SweepReader.isTouchstone(bytes, name)) {
                boolean corrected = sha256.equals(form.get("columnsOf"));
                mapping = corrected ? ColumnForm.read(form) : null;
                preview = SweepReader.preview(bytes, mapping, fixture);
                if (mapping == null) {
                    mapping = preview.proposal();
                    if (mapping == null) {
                        return new Upload(name, bytes, sha256, preview, null, null, preview.note());
                    }
                    ColumnForm.fill(form, mapping);
                }
            }
            ReadSweep sweep = SweepReader.read(bytes, name, options(fixture, mapping, form));
            return new Upload(name, bytes, sha256, preview, mapping, sweep, null);
        } catch (SweepFileException | IllegalArgumentException e) {
            return new Upload(name, bytes, sha256, preview, mapping, null, e.getMessage());
        }
    }

    public boolean readable() {
        return sweep != null;
    }

    private static ReadOptions options(Fixture fixture, ColumnMapping mapping, Form form) {
        Integer port = form.whole("port", "Port", 1, 2, false);
        Integer block = form.whole("block", "Which sweep of the file", 1, MOST_BLOCKS, false);
        ReadOptions options = ReadOptions.of(fixture).withColumns(mapping);
        if (port != null) {
            options = options.withPort(port);
        }
        return block == null ? options : options.withBlock(block);
    }

    private static Upload refused(String name, byte[] bytes, String problem) {
        return new Upload(name, bytes, Sha256.of(bytes), null, null, null, problem);
    }

    private static String nameOnly(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1).strip();
    }
}
