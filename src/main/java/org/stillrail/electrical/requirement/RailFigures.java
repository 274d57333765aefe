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
        Space space) {
}
