package org.stillrail.electrical.requirement;

/**
 * The window round the nominal voltage in which the rail must stay, and what takes its share of it before the bank does.
 *
 * @param plusV             allowed above nominal
 * @param minusV            allowed below nominal, a positive number
 * @param setPointAccuracyV plus and minus
 * @param regulationV       line and load regulation together, plus and minus
 */
public record VoltageWindow(double plusV, double minusV, double setPointAccuracyV, double regulationV, Citation citation) {
}
