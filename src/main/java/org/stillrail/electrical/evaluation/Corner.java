package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.BoostCurrent;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.ConverterCurrent;
import org.stillrail.electrical.ripple.InvertingCurrent;

/**
 * Conditions that a bank is judged under: from an input it makes the bank, the power stage and the current of just these
 * conditions.
 *
 * @param name in words, as in 'lowest input (4.5 V)'
 */
public record Corner(String name, double inputV) {

    /** Length of the edges of a rectifier's current, which rails do not state. Common practice, no source. */
    static final double EDGE_S = 20e-9;
    private static final String NOMINAL = "nominal";

    /** The nominal corner first, then those that differ from it. */
    public static List<Corner> of(RailFigures rail) {
        InputRange range = rail.input();
        List<Corner> corners = new ArrayList<>();
        corners.add(nominal(rail));
        if (range.minimumV() != range.nominalV()) {
            corners.add(new Corner("lowest input (" + Words.quantity(range.minimumV(), "V") + ")", range.minimumV()));
        }
        if (range.maximumV() != range.nominalV()) {
            corners.add(new Corner("highest input (" + Words.quantity(range.maximumV(), "V") + ")", range.maximumV()));
        }
        return List.copyOf(corners);
    }

    public static Corner nominal(RailFigures rail) {
        return new Corner(NOMINAL, rail.input().nominalV());
    }

    /** As the end of a sentence. */
    static String at(String name) {
        return " at the " + name + (NOMINAL.equals(name) ? " corner" : "");
    }

    Bank bank(EvaluationInput input) {
        return input.bank();
    }

    /** @throws IllegalArgumentException where a buck cannot make the output from this input */
    PowerStage stage(RailFigures rail) {
        ConverterFigures converter = rail.converter();
        return new PowerStage(inputV, rail.nominalVoltageV(), converter.inductanceH(), converter.resistanceOhm(), converter.switchingHz(),
                converter.phases());
    }

    /**
     * The current into the output node, null for a flyback, whose turns the rail does not state.
     *
     * @throws IllegalArgumentException where the converter cannot make the output from this input
     */
    ConverterCurrent current(RailFigures rail) {
        ConverterFigures converter = rail.converter();
        double outputV = rail.nominalVoltageV();
        return switch (converter.topology()) {
            case BUCK -> new BuckCurrent(inputV, outputV, converter.inductanceH(), converter.switchingHz(), converter.phases());
            case BOOST -> new BoostCurrent(inputV, outputV, converter.inductanceH(), converter.switchingHz(), converter.phases(),
                    rail.nominalCurrentA(), EDGE_S);
            case INVERTING_BUCK_BOOST -> new InvertingCurrent(inputV, outputV, converter.inductanceH(), converter.switchingHz(),
                    converter.phases(), rail.nominalCurrentA(), EDGE_S);
            case FLYBACK -> null;
        };
    }
}
