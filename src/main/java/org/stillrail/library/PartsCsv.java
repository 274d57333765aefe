package org.stillrail.library;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.stillrail.web.Csv;
import org.stillrail.web.Form;

/** Parts as comma-separated text: a column for each field of the part form under the field's name, a line for each part. */
final class PartsCsv {

    private static final int MOST_LINES = 20_000;

    private PartsCsv() {
    }

    /** One line as fields of the part form. */
    record Line(int number, Form form) {
    }

    /** Every column that can be read. */
    static List<String> columns() {
        return columns(LossForm.MOST_ROWS);
    }

    private static List<String> columns(int losses) {
        List<String> columns = new ArrayList<>(List.of("partNumber"));
        columns.addAll(PartDifference.fields());
        for (int i = 0; i < losses; i++) {
            columns.addAll(List.of("loss" + i + "Kind", "loss" + i + "Value", "loss" + i + "Frequency", "loss" + i + "Bound"));
        }
        return columns;
    }

    static String write(List<PartDocument> parts) {
        List<String> columns = columns(parts.stream().mapToInt(part -> part.losses().size()).max().orElse(0));
        return Csv.write(columns, parts.stream().map(part -> {
            Form form = PartForm.fill(part);
            return columns.stream().map(form::get).toList();
        }).toList());
    }

    /** @throws IllegalArgumentException where the text is no table of parts, naming the line or column */
    static List<Line> read(String text) {
        List<Line> lines = new ArrayList<>();
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true).setTrim(true).get();
        try (CSVParser parser = format.parse(new StringReader(plain))) {
            List<String> unknown = new ArrayList<>(parser.getHeaderNames());
            if (!unknown.contains("partNumber")) {
                throw new IllegalArgumentException("The first line must name the columns, among them partNumber");
            }
            unknown.removeAll(columns());
            if (!unknown.isEmpty()) {
                throw new IllegalArgumentException("There is no column '" + unknown.get(0) + "'; known are " + String.join(", ", columns()));
            }
            for (CSVRecord record : parser) {
                if (lines.size() == MOST_LINES) {
                    throw new IllegalArgumentException("At most " + MOST_LINES + " parts at once");
                }
                int number = (int) parser.getCurrentLineNumber();
                if (!record.isConsistent()) {
                    throw new IllegalArgumentException("Line " + number + " has " + record.size() + " cells, the first line has "
                            + parser.getHeaderNames().size());
                }
                Form form = Form.empty();
                record.toMap().forEach((name, cell) -> form.with(name, Csv.plain(cell)));
                lines.add(new Line(number, form));
            }
        } catch (IOException | IllegalStateException | UncheckedIOException e) {
            throw new IllegalArgumentException("This is not comma-separated text: " + e.getMessage(), e);
        }
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("There is no line with a part");
        }
        return lines;
    }
}
