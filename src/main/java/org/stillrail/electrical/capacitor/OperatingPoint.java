package org.stillrail.electrical.capacitor;

/**
 * Where a part stands: DC bias in V, temperature in degrees Celsius, hours since its last heat (ceramics age from there).
 *
 * @param ageHours null stands for the referee age of the part
 */
public record OperatingPoint(double biasV, double temperatureC, Double ageHours) {

    /** No bias, 25 degC, the referee age. */
    public static final OperatingPoint REFERENCE = new OperatingPoint(0, 25, null);
}
