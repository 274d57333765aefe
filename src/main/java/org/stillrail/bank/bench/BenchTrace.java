package org.stillrail.bank.bench;

/**
 * A voltage over time.
 *
 * @param timeS       ascending, as long as {@code voltageV}
 * @param bandwidthHz of oscilloscope and probe together
 */
record BenchTrace(double[] timeS, double[] voltageV, double bandwidthHz) {
}
