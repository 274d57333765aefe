package org.stillrail.electrical.spread;

import java.util.Objects;

/**
 * A figure of each random bank: of the whole bank, or of one of its branches.
 *
 * @param branch index in the bank; null for the whole
 * @param name   of the branch; null for the whole
 */
public record DrawnFigure(RandomFigure kind, Integer branch, String name) {

    public DrawnFigure {
        Objects.requireNonNull(kind, "kind");
        if ((branch == null) != (name == null)) {
            throw new IllegalArgumentException("branch and name belong together: give both or neither");
        }
    }

    public static DrawnFigure ofBank(RandomFigure kind) {
        return new DrawnFigure(kind, null, null);
    }

    public String label() {
        return branch == null ? kind.label() : kind.label() + " of '" + name + "'";
    }

    public String unit() {
        return kind.unit();
    }
}
