package org.stillrail.electrical.requirement;

/**
 * All that a rail asks. A limit that is null is not asked; a scratch bank asks for little more than its converter.
 *
 * @param nominalVoltageV of the output
 * @param nominalCurrentA of the load
 */
public record RailFigures(
        double nominalVoltageV,
        double nominalCurrentA,
        InputRange input,
        ConverterFigures converter,
        RippleLimit ripple,
        VoltageWindow window,
        LoadStep loadStep,
        EsrWindow esrWindow,
        Ambient ambient,
        Life life,
        Space space,
        StartUpRamp startUp,
        BleedResistor bleed,
        LoopMarginLimits margins) {

    /** A rail that says nothing of coming up and of being emptied. */
    public RailFigures(
            double nominalVoltageV, double nominalCurrentA, InputRange input, ConverterFigures converter, RippleLimit ripple, VoltageWindow window,
            LoadStep loadStep, EsrWindow esrWindow, Ambient ambient, Life life, Space space) {
        this(nominalVoltageV, nominalCurrentA, input, converter, ripple, window, loadStep, esrWindow, ambient, life, space, null, null);
    }

    /** A rail that asks for no margin of its loop beyond the team's damping. */
    public RailFigures(
            double nominalVoltageV, double nominalCurrentA, InputRange input, ConverterFigures converter, RippleLimit ripple, VoltageWindow window,
            LoadStep loadStep, EsrWindow esrWindow, Ambient ambient, Life life, Space space, StartUpRamp startUp, BleedResistor bleed) {
        this(nominalVoltageV, nominalCurrentA, input, converter, ripple, window, loadStep, esrWindow, ambient, life, space, startUp, bleed, null);
    }
}
