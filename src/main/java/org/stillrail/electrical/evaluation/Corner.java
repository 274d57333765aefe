package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;

/**
 * Conditions that a bank is judged under: from an input it makes the bank, the power stage and the current of just these
 * conditions.
 *
 * @param name in words, as in 'lowest input (4.5 V)'
 */
public record Corner(String name, double inputV) {

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

    /** The current into the output node; of a buck. */
    PeriodicCurrent current(RailFigures rail) {
        ConverterFigures converter = rail.converter();
        return new BuckCurrent(inputV, rail.nominalVoltageV(), converter.inductanceH(), converter.switchingHz(), converter.phases());
    }
}
