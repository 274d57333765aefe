package org.stillrail.electrical.quality;

import java.util.List;

/**
 * One thing that a reader of a sweep should know.
 *
 * @param text  what was found, with figures, in a sentence
 * @param where the frequencies concerned; empty where it is the sweep as a whole
 */
public record Finding(FindingKind kind, String text, List<FrequencySpan> where) {

    public Finding {
        where = List.copyOf(where);
    }

    public String advice() {
        return kind.advice();
    }
}
