package org.stillrail.sweepfile;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Splits delimited text into rows of cells, one at a time; blank lines are rows too, so that numbers of lines stay right. */
final class CellRows implements Iterator<CellRow> {

    private final CSVParser parser;
    private final Iterator<CSVRecord> records;

    CellRows(String text, Delimiter delimiter) {
        String split = delimiter == Delimiter.SPACE ? blanksToTabs(text) : text;
        CSVFormat format = CSVFormat.DEFAULT.builder()
                .setDelimiter(delimiter.character())
                .setQuote(split.indexOf('"') >= 0 && isQuoting(split, delimiter) ? '"' : null)
                .setIgnoreEmptyLines(false)
                .setRecordSeparator('\n')
                .setLenientEof(true)
                .setTrailingData(true)
                .get();
        try {
            parser = CSVParser.parse(new StringReader(split), format);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        records = parser.iterator();
    }

    @Override
    public boolean hasNext() {
        try {
            return records.hasNext();
        } catch (UncheckedIOException | IllegalStateException e) {
            throw unsplittable();
        }
    }

    @Override
    public CellRow next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        try {
            CSVRecord record = records.next();
            int lines = 1 + lineFeedsIn(record);
            int number = (int) parser.getCurrentLineNumber() - lines + 1;
            return row(Math.max(1, number), record);
        } catch (UncheckedIOException | IllegalStateException e) {
            throw unsplittable();
        }
    }

    private static CellRow row(int number, CSVRecord record) {
        if (record.size() > Limits.COLUMNS) {
            throw new SweepFileException(number, "more than " + Limits.COLUMNS + " columns");
        }
        List<String> cells = new ArrayList<>(record.size());
        for (String cell : record) {
            cells.add(cell.strip());
        }
        return new CellRow(number, cells);
    }

    private static int lineFeedsIn(CSVRecord record) {
        int feeds = 0;
        for (String cell : record) {
            feeds += (int) cell.chars().filter(c -> c == '\n').count();
        }
        return feeds;
    }

    private SweepFileException unsplittable() {
        return new SweepFileException((int) parser.getCurrentLineNumber() + 1, "the line cannot be split into columns; look for a"
                + " quotation mark that is not closed");
    }

    /** A quotation mark also means imaginary part or inch; it quotes only where a cell begins with it. */
    private static boolean isQuoting(String text, Delimiter delimiter) {
        for (int at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at + 1)) {
            char before = at == 0 ? '\n' : text.charAt(at - 1);
            if (before == '\n' || before == delimiter.character()) {
                return true;
            }
        }
        return false;
    }

    private static String blanksToTabs(String text) {
        StringBuilder tabbed = new StringBuilder(text.length());
        boolean lineStart = true;
        boolean blank = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                tabbed.append(c);
                lineStart = true;
                blank = false;
            } else if (c == ' ' || c == '\t' || c == '\u00a0') {
                blank = !lineStart;
            } else {
                if (blank) {
                    tabbed.append('\t');
                }
                tabbed.append(c);
                lineStart = false;
                blank = false;
            }
        }
        return tabbed.toString();
    }
}
