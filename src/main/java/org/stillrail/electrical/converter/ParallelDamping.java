package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * An inductor and a low-loss capacitance, damped by a second capacitance with a resistance in series across the first: of all
 * resistances one gives the least peak of the output impedance. With {@code n = Cdamping / C}, {@code R0 = sqrt(L / C)}:
 *
 * <pre>
 * R / R0    = sqrt((4 + 3n) (2 + n) / (2 n^2 (4 + n)))
 * peak / R0 = sqrt(2 (2 + n)) / n          at f0 sqrt(2 / (2 + n)),  f0 = 1 / (2 pi sqrt(L C))
 * n for a wanted peak Z:  (R0 / Z)^2 (1 + sqrt(1 + 4 (Z / R0)^2))
 * </pre>
 *
 * Sources: R. D. Middlebrook 1978; R. W. Erickson, Optimal single resistor damping of input filters, 1999 (both from memory).
 * Inductances of the capacitors and loss elsewhere are left out.
 *
 * @param inductanceH         of the inductor, all phases in parallel
 * @param capacitanceF        of the undamped capacitors, such as ceramics
 * @param dampingCapacitanceF of the damping capacitors, such as bulk
 */
public record ParallelDamping(double inductanceH, double capacitanceF, double dampingCapacitanceF) {

    private static final int POINTS_PER_DECADE = 400;
    private static final double SPAN = 100;
    private static final int HALVINGS = 60;

    public ParallelDamping {
        Require.positive("inductanceH", inductanceH);
        Require.positive("capacitanceF", capacitanceF);
        Require.positive("dampingCapacitanceF", dampingCapacitanceF);
    }

    /** The least damping capacitance whose best resistance keeps the peak at a wanted impedance in ohm. */
    public static ParallelDamping forPeak(double inductanceH, double capacitanceF, double peakOhm) {
        Require.positive("peakOhm", peakOhm);
        double ratio = Math.sqrt(inductanceH / capacitanceF) / peakOhm;
        double n = ratio * ratio * (1 + Math.sqrt(1 + 4 / (ratio * ratio)));
        return new ParallelDamping(inductanceH, capacitanceF, n * capacitanceF);
    }

    /** R0 in ohm. */
    public double characteristicOhm() {
        return Math.sqrt(inductanceH / capacitanceF);
    }

    /** f0 in Hz: the resonance that is damped. */
    public double resonanceHz() {
        return 1 / (2 * Math.PI * Math.sqrt(inductanceH * capacitanceF));
    }

    /** The best resistance in series with the damping capacitance, in ohm. */
    public double bestResistanceOhm() {
        double n = ratio();
        return characteristicOhm() * Math.sqrt((4 + 3 * n) * (2 + n) / (2 * n * n * (4 + n)));
    }

    /** The peak of the impedance with the best resistance, in ohm. */
    public double bestPeakOhm() {
        double n = ratio();
        return characteristicOhm() * Math.sqrt(2 * (2 + n)) / n;
    }

    /** Where that peak is. */
    public double bestPeakHz() {
        return resonanceHz() * Math.sqrt(2 / (2 + ratio()));
    }

    /**
     * The peak of the impedance with any resistance in series with the damping capacitance, in ohm: where the present bank lies
     * beside the optimum. Positive infinity with none.
     */
    public double peakOhm(double resistanceOhm) {
        Require.notNegative("resistanceOhm", resistanceOhm);
        if (resistanceOhm == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double low = Math.log(resonanceHz() / Math.sqrt(1 + ratio()) / SPAN);
        int points = (int) Math.ceil(POINTS_PER_DECADE * Math.log10(SPAN * SPAN * Math.sqrt(1 + ratio())));
        double step = Math.log(SPAN * SPAN * Math.sqrt(1 + ratio())) / points;
        int best = 0;
        for (int i = 1; i <= points; i++) {
            best = squared(low + i * step, resistanceOhm) > squared(low + best * step, resistanceOhm) ? i : best;
        }
        double a = low + (best - 1) * step;
        double b = low + (best + 1) * step;
        for (int i = 0; i < HALVINGS; i++) {
            double left = a + (b - a) / 3;
            double right = b - (b - a) / 3;
            if (squared(left, resistanceOhm) < squared(right, resistanceOhm)) {
                a = left;
            } else {
                b = right;
            }
        }
        return Math.sqrt(squared((a + b) / 2, resistanceOhm));
    }

    private double ratio() {
        return dampingCapacitanceF / capacitanceF;
    }

    /** |Z|^2 = 1 / |Y|^2 of inductor, capacitance and damping branch in parallel. */
    private double squared(double logHz, double resistanceOhm) {
        double omega = 2 * Math.PI * Math.exp(logHz);
        double reactance = 1 / (omega * dampingCapacitanceF);
        double branch = resistanceOhm * resistanceOhm + reactance * reactance;
        double conductance = resistanceOhm / branch;
        double susceptance = reactance / branch + omega * capacitanceF - 1 / (omega * inductanceH);
        return 1 / (conductance * conductance + susceptance * susceptance);
    }
}
