package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds delimiter, decimal mark, headings and the first line of numbers from the first lines of a text file: the delimiter with
 * which most lines become rows of numbers of one width.
 */
final class LayoutFinder {

    /** Lines looked at; preambles of instruments are shorter. */
    private static final int HEAD_LINES = 400;
    private static final int HEAD_CHARACTERS = 200_000;

    private static final int LINES_BELOW_HEADINGS = 4;

    private final String head;

    private LayoutFinder(String head) {
        this.head = head;
    }

    /**
     * @param mapping may fix the delimiter and the decimal mark; may be null
     * @throws SweepFileException where no line holds numbers
     */
    static TextLayout find(String text, ColumnMapping mapping) {
        return new LayoutFinder(headOf(text)).find(
                mapping == null ? null : mapping.delimiter(), mapping == null ? null : mapping.decimalComma());
    }

    /** The first lines in cells. */
    static List<CellRow> head(String text, Delimiter delimiter) {
        List<CellRow> rows = new ArrayList<>();
        CellRows all = new CellRows(headOf(text), delimiter);
        while (all.hasNext()) {
            rows.add(all.next());
        }
        return rows;
    }

    private static String headOf(String text) {
        int end = -1;
        for (int line = 0; line < HEAD_LINES; line++) {
            int next = text.indexOf('\n', end + 1);
            if (next < 0) {
                return text.length() <= HEAD_CHARACTERS ? text : text.substring(0, HEAD_CHARACTERS);
            }
            end = next;
            if (end > HEAD_CHARACTERS) {
                break;
            }
        }
        return text.substring(0, Math.min(end, HEAD_CHARACTERS));
    }

    private TextLayout find(Delimiter fixedDelimiter, Boolean fixedDecimalComma) {
        Candidate best = null;
        for (Delimiter delimiter : Delimiter.values()) {
            if (fixedDelimiter != null && fixedDelimiter != delimiter) {
                continue;
            }
            List<CellRow> rows = head(head, delimiter);
            for (boolean decimalComma : new boolean[] {false, true}) {
                boolean possible = fixedDecimalComma == null
                        ? !(decimalComma && delimiter == Delimiter.COMMA) : fixedDecimalComma == decimalComma;
                Candidate candidate = possible ? new Candidate(delimiter, decimalComma, rows) : null;
                if (candidate != null && (best == null || candidate.isBetterThan(best))) {
                    best = candidate;
                }
            }
        }
        if (best == null || best.dataRows == 0) {
            throw SweepFileException.ofFile("No line of numbers was found: neither a Touchstone file nor text in columns"
                    + " with a frequency and two more numbers on a line");
        }
        return best.layout();
    }

    /** One way to split the head, and how well it does. */
    private static final class Candidate {

        private final Delimiter delimiter;
        private final boolean decimalComma;
        private final List<CellRow> rows;
        private final int width;
        private final int dataRows;
        private final int numericCells;

        Candidate(Delimiter delimiter, boolean decimalComma, List<CellRow> rows) {
            this.delimiter = delimiter;
            this.decimalComma = decimalComma;
            this.rows = rows;
            Map<Integer, Integer> byWidth = new HashMap<>();
            for (CellRow row : rows) {
                if (isNumeric(row)) {
                    byWidth.merge(row.width(), 1, Integer::sum);
                }
            }
            int bestWidth = 0;
            int bestCount = 0;
            for (Map.Entry<Integer, Integer> entry : byWidth.entrySet()) {
                if (entry.getValue() > bestCount || entry.getValue() == bestCount && entry.getKey() > bestWidth) {
                    bestWidth = entry.getKey();
                    bestCount = entry.getValue();
                }
            }
            width = bestWidth;
            dataRows = bestCount;
            numericCells = rows.stream().filter(row -> row.width() == width && isNumeric(row))
                    .mapToInt(row -> row.numericCells(decimalComma)).sum();
        }

        boolean isBetterThan(Candidate other) {
            return dataRows != other.dataRows ? dataRows > other.dataRows : numericCells > other.numericCells;
        }

        /** Most of the cells are numbers, three at least: a frequency and a pair. */
        private boolean isNumeric(CellRow row) {
            int numbers = row.numericCells(decimalComma);
            return numbers >= 3 && 2 * numbers > row.width();
        }

        TextLayout layout() {
            int first = firstUnderKnownHeadings();
            if (first < 0) {
                first = firstOfMostRows();
            }
            Headings headings = Headings.above(rows.subList(0, first), Math.max(rows.get(first).width(), width), delimiter);
            return new TextLayout(delimiter, decimalComma, rows.get(first).number(), headings.texts(), headings.line());
        }

        /** A file may hold other tables before the sweep; headings that make a whole show where it is. */
        private int firstUnderKnownHeadings() {
            for (int i = 0; i < rows.size(); i++) {
                if (rows.get(i).width() < 3 || rows.get(i).numericCells(decimalComma) > 0) {
                    continue;
                }
                Set<ColumnKind> kinds = EnumSet.noneOf(ColumnKind.class);
                rows.get(i).cells().forEach(cell -> Optional.ofNullable(HeadingWords.of(cell).kind()).ifPresent(kinds::add));
                if (kinds.contains(ColumnKind.FREQUENCY) && ColumnPair.among(kinds).isPresent()) {
                    for (int j = i + 1; j < Math.min(rows.size(), i + 1 + LINES_BELOW_HEADINGS); j++) {
                        if (isNumeric(rows.get(j))) {
                            return j;
                        }
                    }
                }
            }
            return -1;
        }

        private int firstOfMostRows() {
            boolean[] numeric = numericColumns();
            for (int i = 0; i < rows.size(); i++) {
                if (isData(rows.get(i), numeric)) {
                    return i;
                }
            }
            throw SweepFileException.ofFile("No line holds a number in every column that is one of numbers elsewhere");
        }

        /** Columns that hold numbers in most of the data rows. */
        private boolean[] numericColumns() {
            int[] counts = new int[width];
            for (CellRow row : rows) {
                if (isNumeric(row) && row.width() == width) {
                    for (int i = 0; i < width; i++) {
                        counts[i] += NumberText.isNumber(row.cell(i), decimalComma) ? 1 : 0;
                    }
                }
            }
            boolean[] numeric = new boolean[width];
            for (int i = 0; i < width; i++) {
                numeric[i] = counts[i] * 5 >= dataRows * 4;
            }
            return numeric;
        }

        private boolean isData(CellRow row, boolean[] numeric) {
            if (!isNumeric(row) || row.width() != width) {
                return false;
            }
            for (int i = 0; i < width; i++) {
                if (numeric[i] && !NumberText.isNumber(row.cell(i), decimalComma)) {
                    return false;
                }
            }
            return true;
        }
    }
}
