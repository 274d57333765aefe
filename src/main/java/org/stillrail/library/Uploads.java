package org.stillrail.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;
import org.stillrail.document.Sha256;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepArchive;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.sweepfile.SweepReader;
import org.stillrail.sweepfile.TextPreview;
import org.stillrail.web.Form;

/** From what a browser sent to uploads that are read; archives are unpacked. */
@Component
class Uploads {

    private static final int MOST_BLOCKS = 10_000;

    private final FixtureRemoval removal;
    private final ColumnMappings mappings;

    Uploads(FixtureRemoval removal, ColumnMappings mappings) {
        this.removal = removal;
        this.mappings = mappings;
    }

    /** A name and bytes, as sent or as unpacked. */
    record Sent(String name, byte[] bytes) {
    }

    /**
     * Every file sent, archives unpacked.
     *
     * @throws SweepFileException where an archive is refused: then nothing of it is taken, nor of the rest
     */
    static List<Sent> unpacked(List<MultipartFile> files) {
        List<Sent> sent = new ArrayList<>();
        for (MultipartFile file : files == null ? List.<MultipartFile>of() : files) {
            String name = file.getOriginalFilename() == null ? "" : nameOnly(file.getOriginalFilename());
            if (name.isEmpty()) {
                continue;
            }
            byte[] bytes = bytes(file);
            if (SweepArchive.isArchive(bytes)) {
                SweepArchive.read(bytes).forEach(entry -> sent.add(new Sent(nameOnly(entry.name()), entry.bytes())));
            } else {
                sent.add(new Sent(name, bytes));
            }
        }
        return sent;
    }

    /** Fills the form's column fields with the saved mapping that it names or with the reader's proposal, where the file is new to it. */
    Upload read(Sent sent, Form form) {
        TextPreview preview = null;
        ColumnMapping mapping = null;
        String sha256 = Sha256.of(sent.bytes());
        try {
            Fixture fixture = Fixture.of(form.get("fixture") == null ? "" : form.get("fixture"));
            Form setupForm = form.without(name -> false);
            MeasurementSetup setup = SetupForm.read(setupForm);
            if (!setupForm.errors().none()) {
                throw new IllegalArgumentException(setupForm.errors().all().values().iterator().next());
            }
            if (!SweepReader.isTouchstone(sent.bytes(), sent.name())) {
                preview = SweepReader.preview(sent.bytes(), null, fixture);
                mapping = chosen(sha256, form);
                if (mapping != null) {
                    preview = SweepReader.preview(sent.bytes(), mapping, fixture);
                }
                if (mapping == null) {
                    mapping = preview.proposal();
                    if (mapping == null) {
                        return new Upload(sent.name(), sent.bytes(), sha256, preview, null, null, null, preview.note());
                    }
                }
                ColumnForm.fill(form, mapping);
            }
            ReadSweep sweep = removal.from(SweepReader.read(sent.bytes(), sent.name(), options(fixture, mapping, form)), fixture, setup);
            return new Upload(sent.name(), sent.bytes(), sha256, preview, mapping, sweep, setup, null);
        } catch (SweepFileException | IllegalArgumentException e) {
            if (e instanceof SweepFileException refused && refused.isOfBlock()) {
                form.errors().add("block", e.getMessage());
            }
            return new Upload(sent.name(), sent.bytes(), sha256, preview, mapping, null, null, e.getMessage());
        }
    }

    /** What the user corrected, else the saved mapping where one was chosen anew, else null. */
    private ColumnMapping chosen(String sha256, Form form) {
        boolean known = sha256.equals(form.get("columnsOf"));
        String saved = form.get("savedMapping");
        boolean savedIsNew = !form.isBlank("savedMapping") && !(known && saved.equals(form.get("columnsFrom")));
        if (savedIsNew) {
            try {
                return mappings.find(UUID.fromString(saved)).orElseThrow(() -> new IllegalArgumentException("There is no such saved mapping"));
            } finally {
                form.with("columnsFrom", saved);
            }
        }
        return known ? ColumnForm.read(form) : null;
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

    private static byte[] bytes(MultipartFile file) {
        try {
            return file.getBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String nameOnly(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1).strip();
    }
}
