package org.stillrail.web;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Tables as comma-separated text (RFC 4180). A text cell that a spreadsheet would take for a formula is given an apostrophe in
 * front; numbers are left alone.
 */
public final class Csv {

    private static final String FORMULA_STARTS = "=+-@\t\r\n|%";
    /** Some spreadsheets split at semicolons or tabs, whatever is quoted. */
    private static final Pattern FORMULA_WITHIN = Pattern.compile("(?<=[;\t\r\n])(?=[=+\\-@])");
    private static final Pattern DEFUSED_WITHIN = Pattern.compile("(?<=[;\t\r\n])'(?=[=+\\-@])");

    private static final Pattern BREAKS = Pattern.compile("[\\p{Cntrl}\u2028\u2029]+");
    /** In a comment; a negative figure with its unit is none. */
    private static final Pattern FORMULA_IN_COMMENT = Pattern.compile("([,;|]\\s*)([=+@]|-(?![\\d.]+ ?\\p{L}*(?:[,;|]|$)))");

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
        comments.forEach(comment -> text.append("# ").append(comment(comment)).append("\r\n"));
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

    /**
     * A sentence for a comment line, on one line. A spreadsheet splits it like the others, so a piece that it would take for a formula
     * is given an apostrophe in front.
     */
    public static String comment(String sentence) {
        String oneLine = BREAKS.matcher(sentence).replaceAll(" ").strip().replace('"', '\'');
        return FORMULA_IN_COMMENT.matcher(oneLine).replaceAll("$1'$2");
    }

    /** What reads the text back takes the apostrophe away again with {@link #plain}. */
    static String defused(String cell) {
        String within = FORMULA_WITHIN.matcher(cell).replaceAll("'");
        return !within.isEmpty() && FORMULA_STARTS.indexOf(within.charAt(0)) >= 0 ? "'" + within : within;
    }

    /** A cell of such a table as it was before it was defused. */
    public static String plain(String cell) {
        String start = cell.length() > 1 && cell.charAt(0) == '\'' && FORMULA_STARTS.indexOf(cell.charAt(1)) >= 0 ? cell.substring(1) : cell;
        return DEFUSED_WITHIN.matcher(start).replaceAll("");
    }
}
