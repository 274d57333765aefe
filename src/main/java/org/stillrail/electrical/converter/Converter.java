package org.stillrail.electrical.converter;

import java.util.Objects;
import org.stillrail.electrical.bank.Bank;

/**
 * Power stage, control and compensator: all that feeds a bank and regulates its voltage.
 *
 * @param target what the compensator was placed for, null where it was given
 */
public record Converter(PowerStage stage, Control control, Compensator compensator, LoopTarget target) {

    public Converter {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(control, "control");
        Objects.requireNonNull(compensator, "compensator");
    }

    /** A converter with a given compensator. */
    public Converter(PowerStage stage, Control control, Compensator compensator) {
        this(stage, control, compensator, null);
    }

    /**
     * A converter whose compensator is placed for this bank.
     *
     * @throws DesignRefusedException in words, where the wish cannot be had
     */
    public static Converter designed(Bank bank, PowerStage stage, Control control, LoopTarget target) {
        return new Converter(stage, control, CompensatorDesign.place(bank, stage, control, target), target);
    }
}
