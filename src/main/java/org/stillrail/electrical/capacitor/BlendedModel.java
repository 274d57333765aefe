package org.stillrail.electrical.capacitor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * Two models of one part in proportion, {@code Z = (1 - u) Za + u Zb}: a sweep between two sweeps. Of passive models it is
 * passive, of causal ones causal.
 *
 * @param share u, from 0 for the first to 1 for the second
 */
public record BlendedModel(ImpedanceModel first, ImpedanceModel second, double share) implements ImpedanceModel {

    public BlendedModel {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share must be from 0 to 1, not " + share);
        }
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        add(first, 1 - share, grid, resistanceOhm, reactanceOhm);
        add(second, share, grid, resistanceOhm, reactanceOhm);
    }

    private static void add(ImpedanceModel model, double weight, FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        double[] r = new double[resistanceOhm.length];
        double[] x = new double[reactanceOhm.length];
        model.addImpedanceTo(grid, r, x);
        for (int i = 0; i < r.length; i++) {
            resistanceOhm[i] += weight * r[i];
            reactanceOhm[i] += weight * x[i];
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        ImpedancePoint a = first.at(hz);
        ImpedancePoint b = second.at(hz);
        return new ImpedancePoint(
                blend(a.resistanceOhm(), b.resistanceOhm()),
                blend(a.reactanceOhm(), b.reactanceOhm()),
                blend(a.resistanceOhmPerHz(), b.resistanceOhmPerHz()),
                blend(a.reactanceOhmPerHz(), b.reactanceOhmPerHz()));
    }

    private double blend(double a, double b) {
        return (1 - share) * a + share * b;
    }

    @Override
    public double inductanceAtInfinityH() {
        return blend(first.inductanceAtInfinityH(), second.inductanceAtInfinityH());
    }

    @Override
    public double[] knotsHz() {
        return DoubleStream.concat(DoubleStream.of(first.knotsHz()), DoubleStream.of(second.knotsHz())).sorted().distinct().toArray();
    }

    @Override
    public ValidRange validRange() {
        return first.validRange().intersect(second.validRange());
    }

    @Override
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>(first.warnings());
        second.warnings().stream().filter(warning -> !warnings.contains(warning)).forEach(warnings::add);
        return List.copyOf(warnings);
    }
}
