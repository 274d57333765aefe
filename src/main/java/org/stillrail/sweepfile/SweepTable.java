package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The mapped columns of a text file in SI units, angles in radians, and where one sweep ends and the next begins. */
final class SweepTable {

    /** Rows {@code from} to {@code to - 1} of one sweep. */
    record Block(int from, int to) {
        int size() {
            return to - from;
        }
    }

    private final TextLayout layout;
    private final MappedColumn frequency;
    private final MappedColumn first;
    private final MappedColumn second;
    private final MappedColumn blockColumn;

    private double[][] values = new double[3][1024];
    private int size;
    private final List<Integer> headingStarts = new ArrayList<>();
    private final List<Integer> labelStarts = new ArrayList<>();
    private String label = "";

    private SweepTable(TextLayout layout, ColumnMapping mapping) {
        this.layout = layout;
        frequency = mapping.column(ColumnKind.FREQUENCY);
        first = mapping.column(mapping.pair().first());
        second = mapping.column(mapping.pair().second());
        blockColumn = mapping.column(ColumnKind.BLOCK);
    }

    static SweepTable read(String text, TextLayout layout, ColumnMapping mapping) {
        SweepTable table = new SweepTable(layout, mapping);
        CellRows rows = new CellRows(text, layout.delimiter());
        CellRow title = null;
        boolean pastHeadings = false;
        while (rows.hasNext()) {
            CellRow row = rows.next();
            if (row.number() < layout.firstDataLine() || row.isBlank() || row.isComment()) {
                continue;
            }
            if (table.isRepeatedHeading(row)) {
                table.headingStarts.add(table.size);
                pastHeadings = true;
                title = null;
            } else if (row.width() == 1 && row.cell(0).matches("(?i)(begin|end)\\b.*")) {
                table.headingStarts.add(table.size);
            } else if (row.width() == 1 && table.isText(row)) {
                title = title == null ? row : title;
            } else {
                refuse(title);
                table.add(row);
            }
        }
        refuse(title);
        if (table.size == 0) {
            throw SweepFileException.ofFile(pastHeadings ? "There are headings but no numbers" : "There are no numbers in the file");
        }
        return table;
    }

    /** Lines of text are a title only where headings follow them. */
    private static void refuse(CellRow title) {
        if (title != null) {
            throw new SweepFileException(title.number(), Phrase.quoted(title.cell(0)) + " stands where a row of numbers should");
        }
    }

    private boolean isText(CellRow row) {
        return !NumberText.isNumber(row.cell(0), layout.decimalComma());
    }

    private boolean isRepeatedHeading(CellRow row) {
        if (layout.headingLine() == 0 || !isText(row)) {
            return false;
        }
        int column = frequency.number() - 1;
        String heading = column < layout.columns() ? layout.headings().get(column) : "";
        return !heading.isEmpty() && row.width() > 1 && !row.cell(column).isEmpty() && heading.startsWith(row.cell(column));
    }

    private void add(CellRow row) {
        if (size == values[0].length) {
            for (int i = 0; i < 3; i++) {
                values[i] = Arrays.copyOf(values[i], 2 * size);
            }
        }
        double hz = number(row, frequency);
        if (hz < 0) {
            throw new SweepFileException(row.number(),
                    "the frequency " + Phrase.quoted(row.cell(frequency.number() - 1)) + " is negative");
        }
        values[0][size] = hz;
        values[1][size] = number(row, first);
        values[2][size] = number(row, second);
        if (blockColumn != null) {
            String next = row.cell(blockColumn.number() - 1);
            if (size > 0 && !next.equals(label)) {
                labelStarts.add(size);
            }
            label = next;
        }
        size++;
        Limits.checkPoints(row.number(), size);
    }

    private double number(CellRow row, MappedColumn column) {
        String cell = row.cell(column.number() - 1);
        double value = NumberText.parse(cell, layout.decimalComma());
        double scaled = value * column.scale();
        if (Double.isNaN(value) || Double.isInfinite(scaled)) {
            String what = "column " + column.number() + " (" + column.kind().key() + ") ";
            String problem = column.number() > row.width() && cell.isEmpty() ? "is missing; the line has "
                    + Phrase.count(row.width(), "column") : cell.isEmpty() ? "is empty" : "is " + Phrase.quoted(cell)
                    + ", which is not a finite number" + (layout.decimalComma() ? " with a decimal comma" : "");
            throw new SweepFileException(row.number(), what + problem);
        }
        return scaled;
    }

    double frequencyHz(int row) {
        return values[0][row];
    }

    double first(int row) {
        return values[1][row];
    }

    double second(int row) {
        return values[2][row];
    }

    /** At least one; the rows of the file in order. */
    List<Block> blocks() {
        List<Integer> starts = new ArrayList<>(headingStarts);
        // A column that changes on nearly every row counts points, not sweeps.
        if (labelStarts.size() + 1 <= Math.max(1, size / 2)) {
            starts.addAll(labelStarts);
        }
        starts.removeIf(start -> start == 0 || start == size);
        if (starts.isEmpty()) {
            starts = FrequencyRestart.starts(values[0], size);
        }
        List<Block> blocks = new ArrayList<>();
        int from = 0;
        for (int start : starts.stream().distinct().sorted().toList()) {
            blocks.add(new Block(from, start));
            from = start;
        }
        blocks.add(new Block(from, size));
        return blocks;
    }
}
