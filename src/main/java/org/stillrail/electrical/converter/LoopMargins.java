package org.stillrail.electrical.converter;

import java.util.List;

/**
 * What a loop comes down to, each as in {@link LoopResult}.
 *
 * @param warnings sentences
 */
public record LoopMargins(
        Double crossoverHz, Double phaseMarginDeg, Double gainMarginDb, boolean stable, Double esrAtCrossoverOhm, List<String> warnings) {

    public LoopMargins {
        warnings = List.copyOf(warnings);
    }
}
