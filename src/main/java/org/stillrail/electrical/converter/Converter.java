package org.stillrail.electrical.converter;

import java.util.Objects;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.Require;

/**
 * Power stage, control and compensator: all that feeds a bank and regulates its voltage.
 *
 * @param target      what the compensator was placed for, null where it was given
 * @param loadLineOhm the set-point falls by this times the inductor current, zero or positive
 */
public record Converter(PowerStage stage, Control control, Compensator compensator, LoopTarget target, double loadLineOhm) {

    public Converter {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(control, "control");
        Objects.requireNonNull(compensator, "compensator");
        Require.notNegative("loadLineOhm", loadLineOhm);
    }

    /** A converter with a given compensator. */
    public Converter(PowerStage stage, Control control, Compensator compensator) {
        this(stage, control, compensator, null, 0);
    }

    /** With other inductors, all else as it is. */
    public Converter withInductanceTimes(double factor) {
        return new Converter(stage.withInductanceTimes(factor), control, compensator, target, loadLineOhm);
    }

    public Converter withLoadLineOhm(double ohm) {
        return new Converter(stage, control, compensator, target, ohm);
    }

    /**
     * A converter whose compensator is placed for this bank.
     *
     * @throws DesignRefusedException in words, where the wish cannot be had
     */
    public static Converter designed(Bank bank, PowerStage stage, Control control, LoopTarget target) {
        return new Converter(stage, control, CompensatorDesign.place(bank, stage, control, target, 0), target, 0);
    }
}
