package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * Text in columns of which only the order matters: traces of an oscilloscope, a measured loop. Lines that are not all numbers
 * are passed over before the first line of numbers; behind it they are refused.
 *
 * @param columns    one array for each column, equally long
 * @param headings   cells of the last line before the numbers, empty where there is none
 * @param firstLine  line number of the first line of numbers
 */
public record NumberColumns(List<double[]> columns, List<String> headings, int firstLine) {

    public NumberColumns {
        columns = List.copyOf(columns);
        headings = List.copyOf(headings);
    }

    public int rows() {
        return columns.get(0).length;
    }

    /**
     * @param least columns that are needed
     * @throws SweepFileException with the line, where the file is no such text
     */
    public static NumberColumns read(byte[] bytes, int least) {
        String text = TextDecoder.decode(bytes);
        NumberColumns best = null;
        SweepFileException refusal = null;
        for (Delimiter delimiter : Delimiter.values()) {
            for (boolean decimalComma : new boolean[] {false, true}) {
                if (decimalComma && delimiter == Delimiter.COMMA) {
                    continue;
                }
                try {
                    NumberColumns found = read(text, delimiter, decimalComma, least);
                    if (found != null && (best == null || found.rows() > best.rows())) {
                        best = found;
                    }
                } catch (SweepFileException e) {
                    // Another way to split may read what this one refuses; if none does, the furthest refusal is told.
                    refusal = refusal == null || e.lineNumber() > refusal.lineNumber() ? e : refusal;
                }
            }
        }
        if (best == null) {
            throw refusal != null ? refusal
                    : SweepFileException.ofFile("No line with " + least + " numbers was found");
        }
        return best;
    }

    private static NumberColumns read(String text, Delimiter delimiter, boolean decimalComma, int least) {
        List<double[]> rows = new ArrayList<>();
        List<String> headings = List.of();
        int first = 0;
        CellRows all = new CellRows(text, delimiter);
        while (all.hasNext()) {
            CellRow row = all.next();
            if (row.isBlank() || row.isComment()) {
                continue;
            }
            double[] numbers = numbers(row, decimalComma, rows.isEmpty() ? row.width() : rows.get(0).length);
            if (numbers != null && row.width() >= least) {
                Limits.checkPoints(row.number(), rows.size() + 1);
                first = rows.isEmpty() ? row.number() : first;
                rows.add(numbers);
            } else if (rows.isEmpty()) {
                headings = row.cells();
            } else {
                throw new SweepFileException(row.number(), "a line of " + rows.get(0).length + " numbers was expected");
            }
        }
        return rows.isEmpty() ? null : new NumberColumns(turned(rows), headings, first);
    }

    /** Null where the row is not all numbers or of another width. */
    private static double[] numbers(CellRow row, boolean decimalComma, int width) {
        if (row.width() != width) {
            return null;
        }
        double[] numbers = new double[width];
        for (int i = 0; i < width; i++) {
            numbers[i] = NumberText.parse(row.cell(i), decimalComma);
            if (Double.isNaN(numbers[i])) {
                return null;
            }
        }
        return numbers;
    }

    private static List<double[]> turned(List<double[]> rows) {
        List<double[]> columns = new ArrayList<>();
        for (int c = 0; c < rows.get(0).length; c++) {
            double[] column = new double[rows.size()];
            for (int r = 0; r < column.length; r++) {
                column[r] = rows.get(r)[c];
            }
            columns.add(column);
        }
        return columns;
    }
}
