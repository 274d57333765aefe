package org.stillrail.library;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.multipart.MultipartFile;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.web.Form;

/** Reads one measured file with the fields of the import form, for rooms above that keep sweeps of their own. */
@Component
public class SweepIntake {

    private final Uploads uploads;
    private final RawFiles rawFiles;
    private final ImportChoices choices;

    SweepIntake(Uploads uploads, RawFiles rawFiles, ImportChoices choices) {
        this.uploads = uploads;
        this.rawFiles = rawFiles;
        this.choices = choices;
    }

    /** A file as it was sent. */
    public record SentFile(String fileName, byte[] bytes) {
    }

    /** The one file sent, or null with the reason in {@code form.errors()} under {@code file} and as a whole. */
    public SentFile file(List<MultipartFile> files, Form form) {
        return refusing(form, () -> {
            List<Uploads.Sent> sent = Uploads.unpacked(files);
            if (sent.size() != 1) {
                throw SweepFileException.ofFile(sent.isEmpty() ? "Choose a file first" : "Choose one file, not " + sent.size());
            }
            return new SentFile(sent.get(0).name(), sent.get(0).bytes());
        });
    }

    /** The sweep with its provenance; null where anything is wrong, and {@code form.errors()} says what. */
    public SweepDocument sweep(SentFile file, Form form) {
        SweepProvenance provenance = ProvenanceForm.read(form);
        SetupForm.read(form);
        Upload upload = uploads.read(new Uploads.Sent(file.fileName(), file.bytes()), form);
        if (!upload.readable()) {
            refuse(form, upload.problem());
        }
        return form.errors().none() ? upload.document(provenance) : null;
    }

    /** How well the instrument tells the impedance and the resistance at each point. */
    public SweepTrust trust(SweepDocument document, Curve curve) {
        Trust trust = Trust.of(document, curve);
        return new SweepTrust(trust.uncertainty(), trust.untrusted().stream().limit(SweepCharts.MOST_SPANS).map(SweepCharts::untrusted).toList(), trust.shieldErrorShown(), trust.words());
    }

    /** Keeps the bytes and returns their SHA-256; within the caller's transaction. */
    public String keepRaw(byte[] bytes) {
        return rawFiles.keep(bytes);
    }

    public ResponseEntity<byte[]> raw(String fileName, String sha256) {
        return RawFiles.download(fileName, rawFiles.find(sha256).orElseThrow());
    }

    /** What the import form offers by name. */
    public void addChoicesTo(Model model) {
        choices.addTo(model);
        model.addAttribute("fixtures", ProvenanceForm.fixtures());
        model.addAttribute("savedMappings", mappings());
    }

    private Map<String, String> mappings() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", "as found in the file");
        all.putAll(choices.mappings());
        return all;
    }

    /** Runs a reader; its refusal becomes the form's message and null is returned. */
    public <T> T refusing(Form form, Supplier<T> reader) {
        try {
            return reader.get();
        } catch (SweepFileException e) {
            refuse(form, e.getMessage());
            return null;
        }
    }

    private static void refuse(Form form, String problem) {
        form.errors().add("file", problem);
        form.errors().add("", problem + ".");
    }
}
