package org.stillrail.electrical.capacitor;

import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * Constant R, L and C in series: {@code Z = R + j (w L - 1 / (w C))}.
 *
 * @param capacitanceF  positive
 * @param resistanceOhm zero or positive
 * @param inductanceH   zero or positive
 */
public record SeriesRlc(double capacitanceF, double resistanceOhm, double inductanceH) implements ImpedanceModel {

    public SeriesRlc {
        Require.positive("capacitanceF", capacitanceF);
        Require.notNegative("resistanceOhm", resistanceOhm);
        Require.notNegative("inductanceH", inductanceH);
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistance, double[] reactance) {
        for (int i = 0; i < resistance.length; i++) {
            double omega = grid.omega(i);
            resistance[i] += resistanceOhm;
            reactance[i] += omega * inductanceH - 1 / (omega * capacitanceF);
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        double omega = 2 * Math.PI * hz;
        double capacitive = 1 / (omega * capacitanceF);
        return new ImpedancePoint(
                resistanceOhm,
                omega * inductanceH - capacitive,
                0,
                2 * Math.PI * inductanceH + capacitive / hz);
    }

    @Override
    public double inductanceAtInfinityH() {
        return inductanceH;
    }
}
