package org.stillrail.electrical.bank;

import java.util.function.ToDoubleFunction;

/**
 * One number that a bank has, for telling what a change does to it.
 *
 * @param unit SI symbol
 */
public record BankFigure(String name, String unit, ToDoubleFunction<Bank> value) {

    public static BankFigure impedanceAt(String name, double hz) {
        return new BankFigure(name, "Ω", bank -> Math.sqrt(bank.at(hz).squaredMagnitude()));
    }

    /** ESR: the real part of the impedance. */
    public static BankFigure resistanceAt(String name, double hz) {
        return new BankFigure(name, "Ω", bank -> bank.at(hz).resistanceOhm());
    }
}
