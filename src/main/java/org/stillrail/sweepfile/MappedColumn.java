package org.stillrail.sweepfile;

import java.util.Objects;

/**
 * One column of a text file and what it holds.
 *
 * @param number  counted from 1
 * @param unit    as in a heading, {@code kHz} or {@code mOhm}; empty for the plain SI unit, degrees for angles
 * @param negated whether the file holds the value with its sign turned round
 */
public record MappedColumn(ColumnKind kind, int number, String unit, boolean negated) {

    /** @throws IllegalArgumentException for a column below 1 or a unit that does not fit the kind */
    public MappedColumn {
        Objects.requireNonNull(kind, "kind");
        unit = unit == null ? "" : unit.strip();
        if (number < 1 || number > Limits.COLUMNS) {
            throw new IllegalArgumentException("column of " + kind.key() + " must be 1 to " + Limits.COLUMNS + ", not " + number);
        }
        if (!unit.isEmpty() && Double.isNaN(kind.dimension().scale(unit))) {
            throw new IllegalArgumentException("'" + unit + "' is no unit of " + kind.key()
                    + (kind.dimension().unit().isEmpty() ? "" : ", which is in " + kind.dimension().unit() + " or a multiple of it"));
        }
    }

    public static MappedColumn of(ColumnKind kind, int number) {
        return new MappedColumn(kind, number, "", false);
    }

    /** What the number in the file is multiplied by to be in SI, angles in radians, with its sign put right. */
    double scale() {
        double scale = kind == ColumnKind.BLOCK ? 1 : kind.dimension().scale(unit);
        return negated ? -scale : scale;
    }

    /** {@code reactance=-4:mOhm}. */
    String toText() {
        return kind.key() + "=" + (negated ? "-" : "") + number + (unit.isEmpty() ? "" : ":" + unit);
    }
}
