package org.stillrail.electrical.requirement;

/**
 * The converter that feeds a rail; reusable between rails.
 *
 * @param inductanceH               of each phase
 * @param inductanceTolerancePercent plus and minus
 * @param resistanceOhm             of each phase's winding and switches
 * @param switchingHz               of each phase
 * @param control                   null where only the ripple is asked about
 * @param currentLimitA             of all phases together, or null
 */
public record ConverterFigures(
        Topology topology, double inductanceH, double inductanceTolerancePercent, double resistanceOhm, int phases, double switchingHz,
        double switchingTolerancePercent, ControlFigures control, Double currentLimitA) {
}
