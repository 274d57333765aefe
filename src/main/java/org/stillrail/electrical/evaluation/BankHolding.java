package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.stress.BankCharge;
import org.stillrail.electrical.stress.BiasCharge;

/** What the parts of a bank hold over the voltage across them, each at its place in a corner, and the fixed capacitance of the load. */
final class BankHolding {

    /** Pieces between two knots where a curve of C meets sweeps, between which 1 / C is straight. */
    private static final int PIECES = 8;

    private BankHolding() {
    }

    /** @param upToV the highest voltage that is asked of it */
    static BankCharge of(EvaluationInput input, Corner corner, double upToV) {
        List<BiasCharge> branches = new ArrayList<>();
        for (int k = 0; k < input.branches().size(); k++) {
            BranchInput branch = input.branches().get(k);
            branches.add(of(branch.count(), branch.part(), corner.conditions().branches().get(k), upToV));
        }
        if (input.distance() != null && input.distance().load() != null) {
            branches.add(new BiasCharge(1, input.distance().load().capacitanceF(), null));
        }
        return new BankCharge(branches);
    }

    private static BiasCharge of(int count, PartInput part, BranchCorner place, double upToV) {
        if (part.sweptBiasesV().length < 2) {
            return new BiasCharge(count, capacitanceF(part, place, 0), part.characteristics().overBias());
        }
        List<CharacteristicCurve.Point> elastances = biasesV(part, upToV).stream()
                .map(v -> new CharacteristicCurve.Point(v, 1 / capacitanceF(part, place, v))).toList();
        return new BiasCharge(count, 1 / elastances.get(0).y(), new CharacteristicCurve(elastances, CharacteristicCurve.Scale.LINEAR), true);
    }

    private static double capacitanceF(PartInput part, BranchCorner place, double biasV) {
        return part.at(new OperatingPoint(biasV, place.point().temperatureC(), place.point().ageHours()), place.place()).capacitanceF();
    }

    /** From 0 V to the first at or above {@code upToV}, wherever the capacitance over bias may bend. */
    private static SortedSet<Double> biasesV(PartInput part, double upToV) {
        CharacteristicCurve typed = part.characteristics().overBias();
        TreeSet<Double> knots = new TreeSet<>(List.of(0.0));
        DoubleStream.of(part.sweptBiasesV()).forEach(knots::add);
        if (typed != null) {
            typed.points().stream().map(CharacteristicCurve.Point::x).filter(v -> v > 0).forEach(knots::add);
        }
        Double last = knots.ceiling(upToV);
        NavigableSet<Double> asked = last == null ? knots : knots.headSet(last, true);
        return typed == null ? asked : inPieces(asked);
    }

    private static SortedSet<Double> inPieces(NavigableSet<Double> knots) {
        TreeSet<Double> biases = new TreeSet<>(knots);
        for (double low : knots.headSet(knots.last())) {
            double high = knots.higher(low);
            for (int i = 1; i < PIECES; i++) {
                biases.add(low + (high - low) * i / PIECES);
            }
        }
        return biases;
    }
}
