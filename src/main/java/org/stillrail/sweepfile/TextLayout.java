package org.stillrail.sweepfile;

import java.util.List;

/**
 * How a text file is laid out.
 *
 * @param firstDataLine number of the first line of numbers, counted from 1
 * @param headings      one for each column, empty strings where there is none
 * @param headingLine   number of the line that the headings stand on; 0 where there are none
 */
record TextLayout(Delimiter delimiter, boolean decimalComma, int firstDataLine, List<String> headings, int headingLine) {

    int columns() {
        return headings.size();
    }

    /** The label of the format, in words. */
    String label(ColumnMapping mapping) {
        StringBuilder label = new StringBuilder("Delimited text, ").append(delimiter.key())
                .append(decimalComma ? ", decimal comma" : "");
        String separator = "; ";
        for (MappedColumn column : mapping.columns()) {
            label.append(separator).append(column.kind().key()).append(" from column ").append(column.number());
            String heading = column.number() <= columns() ? headings.get(column.number() - 1) : "";
            if (!heading.isEmpty()) {
                label.append(" '").append(heading.length() > 40 ? heading.substring(0, 40) : heading).append('\'');
            }
            if (!column.unit().isEmpty()) {
                label.append(" in ").append(column.unit());
            }
            label.append(column.negated() ? " negated" : "");
            separator = ", ";
        }
        return label.toString();
    }
}
