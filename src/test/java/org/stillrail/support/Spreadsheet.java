package org.stillrail.support;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What a spreadsheet makes of a comma-separated text. */
public final class Spreadsheet {

    /** Names that begin a formula in cells as a spreadsheet splits them, at commas or semicolons. */
    public static final List<String> HOSTILE = List.of("=1+1", "+1+1|' /C x'!A0", "-1+1+cmd|' /C x'!A0", "@SUM(1+1)",
            "a,=1+1,+1+1,-1+1,@SUM(1+1)", "b;=1+1;+1+1;-1+1;@SUM(1+1)", "c\",=1+1", "d;\t=1+1");
    private static final Pattern FIGURE = Pattern.compile("-[\\d.]+(E-?\\d+)?( ?\\p{L}*)");

    private Spreadsheet() {
    }

    /** Cells that it would run. */
    public static List<String> formulas(String table) throws IOException {
        return cells(table).map(String::strip).filter(cell -> cell.matches("(?s)[=+\\-@].*") && !FIGURE.matcher(cell).matches()).toList();
    }

    /** As one reads the text that splits at commas and heeds quotation marks, and as one that splits at semicolons and does not. */
    private static Stream<String> cells(String table) throws IOException {
        try (CSVParser parser = CSVParser.parse(table, CSVFormat.RFC4180)) {
            List<String> cells = parser.stream().flatMap(CSVRecord::stream).toList();
            return Stream.concat(cells.stream(), Stream.of(table.split("[;\\t\\r\\n]+")));
        }
    }
}
