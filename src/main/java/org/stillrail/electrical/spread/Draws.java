package org.stillrail.electrical.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.bank.TwoNodePoint;
import org.stillrail.electrical.capacitor.BentModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ShiftedResistance;
import org.stillrail.electrical.converter.SampledLoop;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.ripple.RippleBasis;

/**
 * Works out the figures of one random bank after the other. Each branch's nominal impedance is laid down once on the frequencies that
 * matter; a draw changes the capacitive part by {@code (1 / k - 1) / (j w C0)} and the resistance by a constant, as characteristics
 * bend a model, and adds the branches up, at two nodes those of each. So only the number of harmonics is an approximation, of which {@link #rippleError} speaks.
 */
final class Draws {

    private static final double FLOOR_HZ = 1e9;

    private final RandomBank bank;
    private final List<FurtherFigures> further;
    private final List<DrawnFigure> figures;
    private final RippleBasis basis;
    private final Laid harmonics;
    private final double[] seriesOhm;
    private final double inductanceH;
    private final boolean[] far;
    private final int variables;
    private final Laid readings;
    private final double[][] loadAdmittance;
    /** Null without a loop. */
    private final Laid loop;

    /** The branches' nominal impedances, each on all frequencies of a grid. */
    private record Laid(FrequencyGrid grid, double[][] resistance, double[][] reactance) {

        static Laid of(RandomBank bank, FrequencyGrid grid) {
            int m = bank.branches().size();
            Laid laid = new Laid(grid, new double[m][grid.size()], new double[m][grid.size()]);
            for (int k = 0; k < m; k++) {
                bank.branches().get(k).branch().addImpedanceTo(grid, laid.resistance[k], laid.reactance[k]);
            }
            return laid;
        }
    }

    Draws(RandomBank bank, List<? extends FurtherFigures> further) {
        this.bank = bank;
        this.further = List.copyOf(further);
        this.figures = Stream.concat(
                Arrays.stream(RandomFigure.values()).filter(bank::has).map(DrawnFigure::ofBank),
                further.stream().flatMap(each -> each.figures().stream())).toList();
        this.basis = bank.current() == null ? null : RippleBasis.of(extremes(bank), bank.current());
        this.harmonics = Laid.of(bank, basis == null ? FrequencyGrid.of(bank.switchingHz()) : basis.frequencies());
        this.readings = Laid.of(bank, FrequencyGrid.of(distinct(bank.crossoverHz(), bank.switchingHz())));
        this.loop = bank.loop() == null ? null : Laid.of(bank, bank.loop().grid());
        int m = bank.branches().size();
        this.seriesOhm = new double[m];
        this.far = new boolean[m];
        int count = 0;
        for (int k = 0; k < m; k++) {
            Branch branch = bank.branches().get(k).branch();
            seriesOhm[k] = seriesOhm(bank.branches().get(k));
            far[k] = bank.distance() != null && branch.node() == Node.LOAD;
            count += bank.lots() ? 2 : 2 * branch.count();
        }
        this.variables = count;
        this.inductanceH = bank.nominal().response(Node.CONVERTER, Node.LOAD).inductanceAtInfinityH();
        this.loadAdmittance = loadAdmittance(bank.distance(), harmonics.grid());
    }

    private static double[] distinct(double a, double b) {
        return a == b ? new double[] {a} : new double[] {Math.min(a, b), Math.max(a, b)};
    }

    /** Nominal, all capacitances and resistances at their least, and capacitances at their most with the least resistance. */
    private static List<Bank> extremes(RandomBank bank) {
        List<Bank> extremes = new ArrayList<>();
        extremes.add(bank.nominal());
        for (boolean high : new boolean[] {false, true}) {
            List<Branch> branches = new ArrayList<>();
            for (RandomBranch random : bank.branches()) {
                double k = 1 + (high ? random.capacitance().most() : random.capacitance().least());
                branches.add(changed(random, k, random.resistance().least()));
            }
            extremes.add(new Bank(branches, bank.distance()));
        }
        return extremes;
    }

    /** The same branch the long way round, through the models themselves. */
    static Branch changed(RandomBranch random, double capacitanceFactor, double resistanceDeviation) {
        Branch branch = random.branch();
        ImpedanceModel bent = capacitanceFactor == 1 ? branch.part()
                : new BentModel(branch.part(), random.capacitanceF(), capacitanceFactor);
        double added = resistanceDeviation * seriesOhm(random);
        ImpedanceModel part = added == 0 ? bent : new ShiftedResistance(bent, added);
        return new Branch(branch.label(), branch.count(), part, branch.mounting(), branch.shared(), branch.node());
    }

    /** The ESR that the tolerance refers to; where less is possible, no more than the lowest Re Z, so that the part stays passive. */
    private static double seriesOhm(RandomBranch random) {
        ImpedanceModel part = random.branch().part();
        double stated = Math.max(0, part.at(random.resistanceHz()).resistanceOhm());
        if (random.resistance().least() >= 0) {
            return stated;
        }
        double floor = Arrays.stream(part.knotsHz()).map(hz -> part.at(hz).resistanceOhm()).min()
                .orElse(part.at(FLOOR_HZ).resistanceOhm());
        return Math.max(0, Math.min(stated, floor));
    }

    /** 0 where the ripple is not modelled. */
    double rippleError() {
        return basis == null ? 0 : basis.relativeError();
    }

    /** What is known of each draw: first those of the bank's impedance. */
    List<DrawnFigure> figures() {
        return figures;
    }

    /** Puts the figures of one draw in the order of {@link #figures} at an index of each array. */
    void draw(long seed, int index, double[][] values) {
        double[] drawn = figures(strays(new CounterRandom(seed, index)));
        for (int figure = 0; figure < drawn.length; figure++) {
            values[figure][index] = drawn[figure];
        }
    }

    private Strays strays(CounterRandom random) {
        List<Double> capacitance = new ArrayList<>();
        List<Double> resistance = new ArrayList<>();
        int variable = 0;
        for (RandomBranch branch : bank.branches()) {
            int parts = bank.lots() ? 1 : branch.branch().count();
            double c = 0;
            double r = 0;
            for (int part = 0; part < parts; part++) {
                c += branch.capacitance().at(random.uniform(variable++));
                r += branch.resistance().at(random.uniform(variable++));
            }
            capacitance.add(c / parts);
            resistance.add(r / parts);
        }
        return new Strays(capacitance, resistance, 1 + bank.inductance().at(random.uniform(variables)));
    }

    /** The figures where nothing strays, in the order of {@link #figures}. */
    double[] nominal() {
        List<Double> none = Collections.nCopies(bank.branches().size(), 0.0);
        return figures(new Strays(none, none, 1));
    }

    private double[] figures(Strays strays) {
        int m = bank.branches().size();
        double[] elastance = new double[m];
        double[] added = new double[m];
        for (int k = 0; k < m; k++) {
            RandomBranch branch = bank.branches().get(k);
            int count = branch.branch().count();
            elastance[k] = (1 / (1 + strays.capacitance().get(k)) - 1) / (2 * Math.PI * branch.capacitanceF() * count);
            added[k] = strays.resistance().get(k) * seriesOhm[k] / count;
        }
        double[] ofImpedance = ofImpedance(elastance, added, strays.inductorFactor());
        double rippleV = ofImpedance[RandomFigure.RIPPLE.ordinal()];
        return DoubleStream.concat(Arrays.stream(RandomFigure.values()).filter(bank::has).mapToDouble(figure -> ofImpedance[figure.ordinal()]),
                further.stream().flatMapToDouble(each -> Arrays.stream(each.of(strays, rippleV)))).toArray();
    }

    /** In the order of {@link RandomFigure}; what is not known of the bank is not a number. */
    private double[] ofImpedance(double[] elastance, double[] added, double inductorFactor) {
        double[] figures = new double[RandomFigure.values().length];
        Arrays.fill(figures, Double.NaN);
        if (basis != null) {
            figures[RandomFigure.RIPPLE.ordinal()] = rippleV(elastance, added) / inductorFactor;
        }
        if (loop != null) {
            putLoop(elastance, added, inductorFactor, figures);
        }
        double[][] near = new double[2][readings.grid().size()];
        double[][] beyond = new double[2][readings.grid().size()];
        addAdmittances(readings, elastance, added, near, beyond);
        TwoNodePoint crossover = point(bank.crossoverHz(), near, beyond);
        TwoNodePoint switching = point(bank.switchingHz(), near, beyond);
        figures[RandomFigure.ESR_AT_CROSSOVER.ordinal()] = crossover.atLoad().re();
        figures[RandomFigure.IMPEDANCE_AT_CROSSOVER.ordinal()] = crossover.atLoad().magnitude();
        figures[RandomFigure.ESR_AT_SWITCHING.ordinal()] = switching.atLoad().re();
        figures[RandomFigure.IMPEDANCE_AT_SWITCHING.ordinal()] = switching.atLoad().magnitude();
        if (bank.distance() != null) {
            figures[RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER.ordinal()] = crossover.atConverter().re();
            figures[RandomFigure.TRANSFER_AT_SWITCHING.ordinal()] = switching.transfer().magnitude();
        }
        return figures;
    }

    /** Not numbers where the loop gain does not cross 1. */
    private void putLoop(double[] elastance, double[] added, double inductorFactor, double[] figures) {
        double[][] y = new double[2][loop.grid().size()];
        addAdmittances(loop, elastance, added, y, y);
        SampledLoop drawn = bank.loop().on(loop.grid(), y[0], y[1], inductorFactor);
        if (drawn.crossoverHz() != null) {
            figures[RandomFigure.CROSSOVER.ordinal()] = drawn.crossoverHz();
            figures[RandomFigure.PHASE_MARGIN.ordinal()] = drawn.phaseMarginDeg();
            figures[RandomFigure.SENSITIVITY_PEAK.ordinal()] = drawn.sensitivityPeak();
        }
    }

    /** At one node all three impedances are the bank's. */
    private TwoNodePoint point(double hz, double[][] near, double[][] beyond) {
        int i = hz == readings.grid().startHz() ? 0 : 1;
        Complex here = new Complex(near[0][i], near[1][i]);
        if (bank.distance() != null) {
            return bank.distance().at(hz, here, new Complex(beyond[0][i], beyond[1][i]));
        }
        Complex z = here.reciprocal();
        return new TwoNodePoint(z, z, z);
    }

    private double rippleV(double[] elastance, double[] added) {
        double[][] near = new double[2][harmonics.grid().size()];
        double[][] beyond = bank.distance() == null ? near : new double[][] {loadAdmittance[0].clone(), loadAdmittance[1].clone()};
        addAdmittances(harmonics, elastance, added, near, beyond);
        if (bank.distance() != null) {
            makeDeterminant(near, beyond, bank.distance().path());
        }
        invert(near);
        return basis.peakToPeakV(near[0], near[1], inductanceH);
    }

    /** What is fixed at the load, as G and B; 0 where nothing is. */
    private static double[][] loadAdmittance(Distance distance, FrequencyGrid grid) {
        double[][] y = new double[2][grid.size()];
        if (distance != null && distance.load() != null) {
            distance.load().addImpedanceTo(grid, y[0], y[1]);
            invert(y);
        }
        return y;
    }

    /** @param near modified, as {@code beyond}: each branch is added to the node where it stands */
    private void addAdmittances(Laid on, double[] elastance, double[] added, double[][] near, double[][] beyond) {
        int n = on.grid().size();
        for (int k = 0; k < far.length; k++) {
            double[] rk = on.resistance()[k];
            double[] xk = on.reactance()[k];
            double[] g = far[k] ? beyond[0] : near[0];
            double[] b = far[k] ? beyond[1] : near[1];
            for (int i = 0; i < n; i++) {
                double branchR = rk[i] + added[k];
                double branchX = xk[i] - elastance[k] / on.grid().hz(i);
                double squared = branchR * branchR + branchX * branchX;
                g[i] += branchR / squared;
                b[i] -= branchX / squared;
            }
        }
    }

    /** Ya becomes {@code Ya + Yb + Ya Yb Zp}, the reciprocal of the transfer impedance. */
    private void makeDeterminant(double[][] near, double[][] beyond, SeriesPath path) {
        for (int i = 0; i < harmonics.grid().size(); i++) {
            double pathX = harmonics.grid().omega(i) * path.inductanceH();
            // 1 + Ya Zp
            double re = 1 + near[0][i] * path.resistanceOhm() - near[1][i] * pathX;
            double im = near[0][i] * pathX + near[1][i] * path.resistanceOhm();
            near[0][i] += beyond[0][i] * re - beyond[1][i] * im;
            near[1][i] += beyond[0][i] * im + beyond[1][i] * re;
        }
    }

    /** @param z modified: real and imaginary parts */
    private static void invert(double[][] z) {
        for (int i = 0; i < z[0].length; i++) {
            double squared = z[0][i] * z[0][i] + z[1][i] * z[1][i];
            z[0][i] /= squared;
            z[1][i] /= -squared;
        }
    }
}
