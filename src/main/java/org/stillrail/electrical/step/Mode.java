package org.stillrail.electrical.step;

/**
 * The equations of one regime as rows over the state vector, and the propagator of their solution.
 *
 * @param voltage      output deviation
 * @param inductor     deviation of the inductor current; zero without a converter
 * @param command      deviation of the compensator's output in units of duty, or of current in current mode
 * @param error        what the integrator integrates
 * @param push         what is compared with the limits: the command in voltage mode; in current mode the inductor's slope, and
 *                     while that is on a limit the rate at which it would go beyond
 * @param followRate   the rate at which the integrator would have to move for the command to follow the limit
 */
record Mode(
        Propagator propagator,
        Row voltage, Row voltageRate,
        Row inductor, Row inductorRate,
        Row command, Row commandRate,
        Row error,
        Row push, Row pushRate,
        Row followRate) {
}
