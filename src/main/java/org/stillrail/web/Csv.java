package org.stillrail.web;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Tables as comma-separated text (RFC 4180). A text cell that a spreadsheet would take for a formula is given an apostrophe in
 * front; numbers are left alone.
 */
public final class Csv {

    private static final String FORMULA_STARTS = "=+-@\t\r\n|%";

    private Csv() {
    }

    /** @param rows of Strings and Numbers; null is an empty cell */
    public static String write(List<String> heading, List<? extends List<?>> rows) {
        return write(List.of(), heading, rows);
    }

    /**
     * With lines before the heading that say where the numbers come from, each behind a hash mark.
     *
     * @param comments sentences; what would break a line is a blank in them
     */
    public static String write(List<String> comments, List<String> heading, List<? extends List<?>> rows) {
        StringWriter text = new StringWriter();
        comments.forEach(comment -> text.append("# ").append(comment.replaceAll("[\\p{Cntrl}\u2028\u2029]+", " ").strip()).append("\r\n"));
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(heading.stream().map(Csv::defused).toList());
            for (List<?> row : rows) {
                for (Object cell : row) {
                    printer.print(cell instanceof String words ? defused(words) : cell);
                }
                printer.println();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** What reads the text back takes the apostrophe away again with {@link #plain}. */
    static String defused(String cell) {
        return !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }

    /** A cell of such a table as it was before it was defused. */
    public static String plain(String cell) {
        return cell.length() > 1 && cell.charAt(0) == '\'' && FORMULA_STARTS.indexOf(cell.charAt(1)) >= 0 ? cell.substring(1) : cell;
    }
}
