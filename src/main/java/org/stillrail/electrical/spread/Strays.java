package org.stillrail.electrical.spread;

import java.util.List;

/**
 * How far one random bank is from nominal.
 *
 * @param capacitance     of each branch's parts, as a share of nominal: their mean where they stray one by one
 * @param resistance      of their ESR, likewise
 * @param inductorFactor  inductance over its nominal value
 */
public record Strays(List<Double> capacitance, List<Double> resistance, double inductorFactor) {

    public Strays {
        capacitance = List.copyOf(capacitance);
        resistance = List.copyOf(resistance);
    }
}
