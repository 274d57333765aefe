package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * What a text file looks like before anything is stored, so that the mapping can be corrected.
 *
 * @param delimiter     as found, or as the mapping fixed it
 * @param decimalComma  likewise
 * @param headingLine   number of the line with the headings; 0 where there are none
 * @param firstDataLine number of the first line of numbers
 * @param columns       every column
 * @param proposal      the mapping that the headings suggest; null where they do not make a whole
 * @param note          why there is no proposal; empty where there is one
 * @param rows          the first rows of numbers, as they stand in the file
 */
public record TextPreview(Delimiter delimiter, boolean decimalComma, int headingLine, int firstDataLine, List<Column> columns,
                          ColumnMapping proposal, String note, List<List<String>> rows) {

    private static final int ROWS = 12;
    private static final int SAMPLES = 3;

    /**
     * @param number  counted from 1
     * @param heading as in the file, empty where there is none
     * @param kind    what the heading means; null where it is not known
     * @param unit    from the heading; empty where there is none
     * @param negated whether the heading says that the values are negated
     * @param samples the first values
     */
    public record Column(int number, String heading, ColumnKind kind, String unit, boolean negated, List<String> samples) {
    }

    /**
     * @param mapping may fix the delimiter and the decimal mark; may be null
     * @param fixture says which of several quantities to propose; may be null
     * @throws SweepFileException where no line of numbers is found
     */
    static TextPreview of(String text, ColumnMapping mapping, Fixture fixture) {
        TextLayout layout = LayoutFinder.find(text, mapping);
        ColumnGuess guess = ColumnGuess.of(layout, fixture);
        List<List<String>> rows = new ArrayList<>();
        for (CellRow row : LayoutFinder.head(text, layout.delimiter())) {
            if (row.number() >= layout.firstDataLine() && !row.isBlank() && rows.size() < ROWS) {
                rows.add(List.copyOf(row.cells().subList(0, row.width())));
            }
        }
        return new TextPreview(layout.delimiter(), layout.decimalComma(), layout.headingLine(), layout.firstDataLine(),
                columns(layout, guess, rows), guess.mapping().orElse(null), guess.reason(), List.copyOf(rows));
    }

    private static List<Column> columns(TextLayout layout, ColumnGuess guess, List<List<String>> rows) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < layout.columns(); i++) {
            HeadingWords words = guess.words().get(i);
            List<String> samples = new ArrayList<>();
            for (List<String> row : rows.subList(0, Math.min(SAMPLES, rows.size()))) {
                samples.add(i < row.size() ? row.get(i) : "");
            }
            columns.add(new Column(i + 1, layout.headings().get(i), words.kind(), words.unit(), words.negated(), samples));
        }
        return List.copyOf(columns);
    }
}
