package org.stillrail.sweepfile;

import java.util.List;

/**
 * One line of a text file in cells.
 *
 * @param number line number counted from 1; the first line of a record that runs over several
 * @param cells  stripped of blanks around them
 */
record CellRow(int number, List<String> cells) {

    /** Cells up to the last one that is not empty, so that a trailing delimiter does not count. */
    int width() {
        int width = cells.size();
        while (width > 0 && cells.get(width - 1).isEmpty()) {
            width--;
        }
        return width;
    }

    boolean isBlank() {
        return width() == 0;
    }

    /** Comments begin with a mark that no number begins with. */
    boolean isComment() {
        return !isBlank() && isCommentMark(cells.get(0));
    }

    /** Empty where there is no such column. */
    String cell(int index) {
        return index < cells.size() ? cells.get(index) : "";
    }

    int numericCells(boolean decimalComma) {
        int count = 0;
        for (String cell : cells) {
            count += NumberText.isNumber(cell, decimalComma) ? 1 : 0;
        }
        return count;
    }

    private static boolean isCommentMark(String cell) {
        return !cell.isEmpty() && "#!%*/".indexOf(cell.charAt(0)) >= 0;
    }
}
