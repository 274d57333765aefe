package org.stillrail.calculation;

import java.util.Arrays;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Control;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CurrentMode;
import org.stillrail.electrical.converter.DesignRefusedException;
import org.stillrail.electrical.converter.LoopTarget;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;

/** From the converter of a checked request to the one that is calculated with. */
final class ConverterResolver {

    private static final String DESIGN = "converter.control.design";

    private ConverterResolver() {
    }

    /**
     * The converter, its compensator placed for this bank where only a wish is given.
     *
     * @throws BadInputException where the wish cannot be had, with the reason
     */
    static Converter resolve(ConverterInput input, Bank bank) {
        PowerStage stage = new PowerStage(input.inputV(), input.outputV(), input.inductanceH(), input.inductorResistanceOhm(),
                input.switchingHz(), input.phaseCount());
        Control control = control(input.control());
        if (input.control().compensator() != null) {
            return new Converter(stage, control, compensator(input.control().compensator()));
        }
        DesignInput wish = input.control().design();
        try {
            return Converter.designed(bank, stage, control, new LoopTarget(wish.crossoverHz(), wish.phaseMarginDeg()));
        } catch (DesignRefusedException e) {
            throw new BadInputException(DESIGN, "cannot be had: " + e.getMessage());
        }
    }

    private static Control control(ControlInput input) {
        if (input instanceof VoltageModeInput voltage) {
            return new VoltageMode(voltage.rampV(), voltage.delayS() == null ? 0 : voltage.delayS());
        }
        CurrentModeInput current = (CurrentModeInput) input;
        return new CurrentMode(current.senseOhm(), current.slopeAPerS());
    }

    private static Compensator compensator(CompensatorInput input) {
        return new Compensator(input.gain(),
                Arrays.stream(input.zerosHz()).boxed().toList(), Arrays.stream(input.polesHz()).boxed().toList());
    }
}
