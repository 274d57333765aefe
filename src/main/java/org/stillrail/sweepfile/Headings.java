package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The headings of columns, taken from the lines above the first line of numbers: the nearest line that has about as many cells. A
 * line of nothing but units under a line of names is joined to it.
 *
 * @param texts one for each column, empty strings where there is none
 * @param line  number of the line; 0 where there is none
 */
record Headings(List<String> texts, int line) {

    private static final int LINES_LOOKED_AT = 6;

    static Headings above(List<CellRow> rows, int width, Delimiter delimiter) {
        int looked = 0;
        for (int i = rows.size() - 1; i >= 0 && looked < LINES_LOOKED_AT; i--) {
            List<String> cells = cells(rows.get(i), width, delimiter);
            if (cells.isEmpty()) {
                continue;
            }
            looked++;
            if (cells.size() < Math.min(width, 3) || cells.size() > width + 1) {
                continue;
            }
            if (areUnits(cells)) {
                List<String> names = i > 0 ? cells(rows.get(i - 1), width, delimiter) : List.of();
                if (names.size() >= Math.min(width, 3)) {
                    return new Headings(joined(names, cells, width), rows.get(i - 1).number());
                }
            }
            return new Headings(padded(cells, width), rows.get(i).number());
        }
        return new Headings(Collections.nCopies(width, ""), 0);
    }

    private static List<String> cells(CellRow row, int width, Delimiter delimiter) {
        List<String> cells = new ArrayList<>(row.cells().subList(0, row.width()));
        if (!cells.isEmpty()) {
            String first = cells.get(0).replaceFirst("^[#!%*/]+\\s*", "");
            if (first.isEmpty() && !cells.get(0).isEmpty() && cells.size() > 1) {
                cells.remove(0);
            } else {
                cells.set(0, first);
            }
        }
        if (cells.size() == 1 && cells.get(0).isEmpty()) {
            return List.of();
        }
        return delimiter == Delimiter.SPACE && cells.size() > width ? withUnitsAttached(cells) : cells;
    }

    /** {@code Freq (Hz) R (Ohm)} between blanks is two headings, not four. */
    private static List<String> withUnitsAttached(List<String> cells) {
        List<String> attached = new ArrayList<>();
        for (String cell : cells) {
            boolean bracketed = cell.matches("[(\\[{].*[)\\]}],?");
            if (bracketed && !attached.isEmpty()) {
                attached.set(attached.size() - 1, attached.get(attached.size() - 1) + " " + cell);
            } else {
                attached.add(cell);
            }
        }
        return attached;
    }

    /** Half of the cells are units of ours, and none is a word that heads a column. */
    private static boolean areUnits(List<String> cells) {
        int units = 0;
        int filled = 0;
        for (String cell : cells) {
            String bare = bare(cell);
            boolean unit = Dimension.isUnit(bare);
            if (!unit && HeadingWords.of(cell).kind() != null) {
                return false;
            }
            filled += bare.isEmpty() ? 0 : 1;
            units += unit ? 1 : 0;
        }
        return units > 0 && 2 * units >= filled;
    }

    private static String bare(String cell) {
        return cell.replaceAll("^[(\\[{]|[)\\]}]$", "").strip();
    }

    private static List<String> joined(List<String> names, List<String> units, int width) {
        List<String> texts = new ArrayList<>(padded(names, width));
        for (int i = 0; i < width && i < units.size(); i++) {
            String unit = bare(units.get(i));
            if (Dimension.isUnit(unit)) {
                texts.set(i, texts.get(i) + "/" + unit);
            }
        }
        return texts;
    }

    private static List<String> padded(List<String> cells, int width) {
        List<String> texts = new ArrayList<>(cells.subList(0, Math.min(width, cells.size())));
        while (texts.size() < width) {
            texts.add("");
        }
        return texts;
    }
}
