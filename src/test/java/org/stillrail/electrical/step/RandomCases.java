package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Control;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CurrentMode;
import org.stillrail.electrical.converter.LoopTarget;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;

/** Banks and converters of every kind that the API allows, from a seed. */
final class RandomCases {

    private final Random random;

    RandomCases(long seed) {
        this.random = new Random(seed);
    }

    Bank bank() {
        int count = 1 + random.nextInt(5);
        List<Branch> branches = new ArrayList<>();
        int kind = random.nextInt(4);
        for (int k = 0; k < count; k++) {
            boolean inductive = kind == 0 || kind > 1 && random.nextBoolean();
            boolean resistive = kind <= 1 || random.nextInt(3) > 0;
            branches.add(new Branch("branch " + k, 1 + random.nextInt(8),
                    new SeriesRlc(between(1e-7, 1e-3), resistive ? between(1e-3, random.nextInt(4) == 0 ? 1e4 : 1e-1) : 0, inductive ? between(2e-10, 2e-8) : 0),
                    random.nextInt(4) == 0 ? new SeriesPath(0, between(1e-10, 1e-9)) : SeriesPath.NONE,
                    random.nextInt(4) == 0 ? new SeriesPath(between(1e-4, 1e-3), 0) : SeriesPath.NONE));
        }
        return new Bank(branches);
    }

    /** Bulk and ceramics in some order on both sides of a path, sensed at either. */
    Bank bankAtTwoNodes() {
        List<Branch> branches = new ArrayList<>();
        int count = 2 + random.nextInt(3);
        for (int k = 0; k < count; k++) {
            branches.add(new Branch("branch " + k, 1 + random.nextInt(8), new SeriesRlc(between(1e-6, 1e-3), between(1e-3, 5e-2), between(2e-10, 2e-8)),
                    SeriesPath.NONE, SeriesPath.NONE, k == 0 ? Node.CONVERTER : k == 1 ? Node.LOAD : random.nextBoolean() ? Node.LOAD : Node.CONVERTER));
        }
        return new Bank(branches, new Distance(new SeriesPath(between(1e-4, 1e-2), between(1e-10, 1e-6)), random.nextInt(3) == 0 ? Node.CONVERTER : Node.LOAD,
                random.nextBoolean() ? new SeriesRlc(between(1e-8, 1e-5), 1e-3, 1e-11) : null));
    }

    PowerStage stage() {
        double outputV = between(0.6, 5);
        return new PowerStage(outputV * (1.3 + 8 * random.nextDouble()), outputV, between(1e-7, 1e-5), random.nextBoolean() ? between(1e-3, 2e-2) : 0,
                between(1e5, 2e6), 1 + random.nextInt(4));
    }

    VoltageMode voltageMode(boolean delayed) {
        return new VoltageMode(between(0.5, 3), delayed ? between(5e-8, 1e-6) : 0);
    }

    CurrentMode currentMode(PowerStage stage) {
        return new CurrentMode(between(2e-3, 5e-2), stage.steepestRiseAPerS() * (1 + stage.duty() / (1 - stage.duty())));
    }

    Compensator compensator() {
        int poles = random.nextInt(4);
        int zeros = random.nextInt(poles + 2);
        List<Double> zerosHz = new ArrayList<>();
        List<Double> polesHz = new ArrayList<>();
        for (int k = 0; k < zeros; k++) {
            zerosHz.add(between(1e3, 1e5));
        }
        for (int k = 0; k < poles; k++) {
            polesHz.add(k > 0 && random.nextBoolean() ? polesHz.get(0) : between(1e4, 1e6));
        }
        return new Compensator(between(1e2, 1e5), zerosHz, polesHz);
    }

    /** Placed for a tenth of the switching frequency where that can be had, else any. */
    Converter soundConverter(Bank bank, PowerStage stage, Control control) {
        try {
            return Converter.designed(bank, stage, control, new LoopTarget(stage.switchingHz() / 10, 50 + 20 * random.nextDouble()));
        } catch (IllegalArgumentException refused) {
            return new Converter(stage, control, new Compensator(between(10, 100), List.of(), List.of()));
        }
    }

    Load load() {
        double a = between(0.1, 20);
        double b = between(0.1, 20);
        return new Load(a, b, between(1e5, 1e9));
    }

    double between(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    boolean coin() {
        return random.nextBoolean();
    }
}
