package org.stillrail.calculation;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.sweepfile.SweepReader;
import org.stillrail.web.Computing;

/** From an uploaded file to an impedance. */
@Component
class SweepConversion {

    private static final String FILE = "file";
    private static final String FIXTURE = "fixture";
    private static final String COLUMNS = "columns";
    private static final List<String> KNOWN = List.of(FILE, FIXTURE, COLUMNS);

    private final Computing computing;

    SweepConversion(Computing computing) {
        this.computing = computing;
    }

    /**
     * @throws BadInputException     naming every wrong field of the form
     * @throws BodyTooLargeException where the file is over the limit for uploads
     */
    SweepAnswer answer(MultipartHttpServletRequest form) throws IOException {
        try {
            return read(form);
        } catch (MaxUploadSizeExceededException e) {
            throw new BodyTooLargeException("The file is over 20 MiB, the most that is taken");
        }
    }

    private SweepAnswer read(MultipartHttpServletRequest form) throws IOException {
        FieldProblems problems = new FieldProblems();
        refuseUnknown(form, problems);
        MultipartFile file = file(form, problems);
        Fixture fixture = fixture(text(form, FIXTURE, problems), problems);
        ColumnMapping columns = columns(text(form, COLUMNS, problems), problems);
        problems.refuseIfAny();
        byte[] bytes = file.getBytes();
        String name = file.getOriginalFilename() == null ? "" : file.getOriginalFilename();
        return computing.within(() -> read(bytes, name, ReadOptions.of(fixture).withColumns(columns)));
    }

    private static SweepAnswer read(byte[] bytes, String name, ReadOptions options) {
        try {
            ReadSweep sweep = SweepReader.read(bytes, name, options);
            return new SweepAnswer(sweep.frequencyHz(), sweep.resistanceOhm(), sweep.reactanceOhm(), sweep.points(),
                    sweep.referenceOhm(), sweep.format(), sweep.warnings());
        } catch (SweepFileException e) {
            throw new BadInputException(FILE, "is refused: " + e.getMessage());
        }
    }

    private static void refuseUnknown(MultipartHttpServletRequest form, FieldProblems problems) {
        TreeSet<String> names = new TreeSet<>(form.getMultiFileMap().keySet());
        names.addAll(form.getParameterMap().keySet());
        names.stream().filter(name -> !KNOWN.contains(name)).forEach(name ->
                problems.add(name, "is not known here; the fields are " + String.join(", ", KNOWN)));
    }

    private static MultipartFile file(MultipartHttpServletRequest form, FieldProblems problems) {
        List<MultipartFile> files = form.getFiles(FILE);
        if (files.size() != 1) {
            problems.add(FILE, files.isEmpty() ? "is required: a file with its name" : "must be one file, not " + files.size());
            return null;
        }
        return files.get(0);
    }

    private static String text(MultipartHttpServletRequest form, String name, FieldProblems problems) {
        Map<String, String[]> fields = form.getParameterMap();
        if (form.getMultiFileMap().containsKey(name)) {
            problems.add(name, "must be text, not a file");
        }
        String[] values = fields.getOrDefault(name, new String[0]);
        if (values.length > 1) {
            problems.add(name, "is given " + values.length + " times");
        }
        return values.length == 0 || values[0].isBlank() ? null : values[0].strip();
    }

    private static Fixture fixture(String label, FieldProblems problems) {
        for (Fixture fixture : Fixture.values()) {
            if (fixture.label().equals(label)) {
                return fixture;
            }
        }
        String known = Arrays.stream(Fixture.values()).map(Fixture::label).collect(Collectors.joining(", "));
        problems.add(FIXTURE, label == null ? "is required: one of " + known : "must be one of " + known);
        return null;
    }

    private static ColumnMapping columns(String text, FieldProblems problems) {
        try {
            return text == null ? null : ColumnMapping.parse(text);
        } catch (IllegalArgumentException e) {
            problems.add(COLUMNS, e.getMessage());
            return null;
        }
    }
}
