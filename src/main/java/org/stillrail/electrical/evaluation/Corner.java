package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.DrawnCurrent;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.BoostCurrent;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.FlybackCurrent;
import org.stillrail.electrical.ripple.InvertingCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.spread.BranchSpread;
import org.stillrail.electrical.spread.Corners;
import org.stillrail.electrical.spread.RailSpread;
import org.stillrail.electrical.spread.SpreadCorner;
import org.stillrail.electrical.spread.Strays;

/**
 * Conditions that a bank is judged under, with the parts as they are then: from a rail it makes the power stage and the
 * current of just these conditions.
 *
 * @param name     in words, as in 'lowest input (4.5 V)', with the alternates that are in
 * @param branches as they are fitted at this corner
 * @param parts    in the bank's order, as warm as their own losses make them
 */
public record Corner(String name, SpreadCorner conditions, List<BranchInput> branches, List<BentPart> parts, Bank bank) {

    public Corner {
        branches = List.copyOf(branches);
        parts = List.copyOf(parts);
    }

    private static final String NOMINAL = "nominal";

    /** The nominal corner first, then those that differ from it. */
    static List<Corner> of(Fitting fitting) {
        EvaluationInput input = fitting.input();
        if (input.branches().isEmpty()) {
            throw new IllegalArgumentException("A bank needs at least one branch");
        }
        return Corners.of(RailSpread.of(input.rail()), spreads(input)).stream()
                .map(corner -> CornerStress.warmed(bent(corner, fitting), fitting)).toList();
    }

    /** Where random banks stand, with the named parts, see {@link Corners#surroundings}. */
    static Corner surroundings(EvaluationInput input, Axis ambient, boolean old, Axis inputVoltage) {
        if (input.branches().isEmpty()) {
            throw new IllegalArgumentException("A bank needs at least one branch");
        }
        Fitting named = Fitting.named(input);
        return CornerStress.warmed(
                bent(Corners.surroundings(RailSpread.of(input.rail()), spreads(input), ambient, old, inputVoltage), named), named);
    }

    /** Where a random bank stands, this being the nominal one's place. */
    Corner straying(Strays strays, Fitting fitting) {
        return bent(conditions.straying(strays), fitting);
    }

    private static List<BranchSpread> spreads(EvaluationInput input) {
        return input.branches().stream().map(branch -> spread(branch, input.rail())).toList();
    }

    /** With every part bent to its place. */
    static Corner bent(SpreadCorner conditions, Fitting fitting) {
        EvaluationInput input = fitting.input();
        List<BentPart> parts = new ArrayList<>();
        List<Branch> branches = new ArrayList<>();
        for (int k = 0; k < input.branches().size(); k++) {
            BranchCorner place = conditions.branches().get(k);
            BranchInput branch = input.branches().get(k);
            BentPart part = branch.part().at(place.point(), place.place());
            parts.add(part);
            branches.add(branch.branch(part.model()));
        }
        return new Corner(name(conditions, fitting), conditions, input.branches(), parts, new Bank(branches, input.distance()));
    }

    /** Of the bank that lacks one branch. */
    Corner without(int branch) {
        List<BentPart> others = new ArrayList<>(parts);
        others.remove(branch);
        List<BranchInput> left = new ArrayList<>(branches);
        left.remove(branch);
        return new Corner(name, conditions.without(branch), left, others, bank.without(branch));
    }

    private static BranchSpread spread(BranchInput branch, RailFigures rail) {
        PartInput part = branch.part();
        Double oldHours = rail.life() == null ? null : (Double) rail.life().hours();
        return new BranchSpread(branch.label(), part.leastDeviation(), part.mostDeviation(), part.leastResistance(), part.mostResistance(),
                oldHours);
    }

    private static String name(SpreadCorner conditions, Fitting fitting) {
        String name = conditions.name().endsWith("input")
                ? conditions.name() + " (" + Words.quantity(conditions.inputV(), "V") + ")" : conditions.name();
        return fitting.name() == null ? name : name.equals(NOMINAL) ? fitting.name() : name + ", " + fitting.name();
    }

    /** As the end of a sentence. */
    static String at(String name) {
        return NOMINAL.equals(name) ? " at the nominal corner" : " with " + name;
    }

    /** @throws IllegalArgumentException where a buck cannot make the output from this input */
    PowerStage stage(RailFigures rail) {
        ConverterFigures converter = rail.converter();
        return new PowerStage(conditions.inputV(), conditions.outputV(), inductanceH(converter), converter.resistanceOhm(),
                switchingHz(converter), converter.phases());
    }

    /** The power stage with every figure nominal. */
    static PowerStage nominalStage(RailFigures rail) {
        ConverterFigures converter = rail.converter();
        return new PowerStage(rail.input().nominalV(), rail.nominalVoltageV(), converter.inductanceH(), converter.resistanceOhm(),
                converter.switchingHz(), converter.phases());
    }

    /**
     * The current into the output node, null for a flyback of unknown turns.
     *
     * @throws IllegalArgumentException where the converter cannot make the output from this input
     */
    PeriodicCurrent current(RailFigures rail) {
        return current(rail, conditions.inputV());
    }

    /** The same from another input, all else as it is here. */
    PeriodicCurrent current(RailFigures rail, double inputV) {
        ConverterFigures converter = rail.converter();
        double outputV = conditions.outputV();
        double inductanceH = inductanceH(converter);
        double switchingHz = switchingHz(converter);
        double edgeS = converter.edgeOrUsualS();
        double loadA = rail.nominalCurrentA();
        return switch (converter.topology()) {
            case BUCK -> new BuckCurrent(inputV, outputV, inductanceH, switchingHz, converter.phases());
            case BOOST -> new BoostCurrent(inputV, outputV, inductanceH, switchingHz, converter.phases(), loadA, edgeS);
            case INVERTING_BUCK_BOOST -> new InvertingCurrent(inputV, outputV, inductanceH, switchingHz, converter.phases(), loadA,
                    edgeS);
            case FLYBACK -> converter.turnsRatio() == null ? null : new FlybackCurrent(inputV, outputV, inductanceH, converter.turnsRatio(),
                    switchingHz, converter.phases(), loadA, edgeS);
            case DRAWN -> drawn(converter.drawnCurrent(), switchingHz);
        };
    }

    /** Its times keep their shares of the period where the switching frequency strays. */
    private PiecewiseLinearCurrent drawn(DrawnCurrent current, double switchingHz) {
        return PiecewiseLinearCurrent.of(1 / switchingHz,
                current.points().stream().mapToDouble(point -> point.timeS() / conditions.switchingFactor()).toArray(),
                current.points().stream().mapToDouble(DrawnCurrent.Point::currentA).toArray());
    }

    private double inductanceH(ConverterFigures converter) {
        return converter.inductanceH() * conditions.inductanceFactor();
    }

    double switchingHz(ConverterFigures converter) {
        return converter.switchingHz() * conditions.switchingFactor();
    }
}
