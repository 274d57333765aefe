package org.stillrail.sweepfile;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.stillrail.electrical.curve.Complex;

/**
 * Two columns that together with the frequency make a complex value: an impedance in ohm, S11 or S21. In the order in which they
 * are preferred where a file offers several. Angles are in radians here, everything else in SI.
 */
enum ColumnPair {

    RESISTANCE_REACTANCE(Holds.IMPEDANCE, ColumnKind.RESISTANCE, ColumnKind.REACTANCE,
            (w, r, x) -> new Complex(r, x)),
    MAGNITUDE_PHASE(Holds.IMPEDANCE, ColumnKind.MAGNITUDE, ColumnKind.PHASE,
            (w, magnitude, phase) -> Complex.polar(magnitude, phase)),
    SERIES_R_L(Holds.IMPEDANCE, ColumnKind.RESISTANCE, ColumnKind.SERIES_INDUCTANCE,
            (w, r, l) -> new Complex(r, w * l)),
    SERIES_R_C(Holds.IMPEDANCE, ColumnKind.RESISTANCE, ColumnKind.SERIES_CAPACITANCE,
            (w, r, c) -> new Complex(r, -1 / (w * c))),
    SERIES_C_D(Holds.IMPEDANCE, ColumnKind.SERIES_CAPACITANCE, ColumnKind.DISSIPATION,
            (w, c, d) -> new Complex(d / Math.abs(w * c), -1 / (w * c))),
    SERIES_C_Q(Holds.IMPEDANCE, ColumnKind.SERIES_CAPACITANCE, ColumnKind.QUALITY,
            (w, c, q) -> new Complex(1 / (Math.abs(w * c) * q), -1 / (w * c))),
    SERIES_L_Q(Holds.IMPEDANCE, ColumnKind.SERIES_INDUCTANCE, ColumnKind.QUALITY,
            (w, l, q) -> new Complex(Math.abs(w * l) / q, w * l)),
    PARALLEL_C_D(Holds.IMPEDANCE, ColumnKind.PARALLEL_CAPACITANCE, ColumnKind.DISSIPATION,
            (w, c, d) -> new Complex(Math.abs(w * c) * d, w * c).reciprocal()),
    PARALLEL_C_Q(Holds.IMPEDANCE, ColumnKind.PARALLEL_CAPACITANCE, ColumnKind.QUALITY,
            (w, c, q) -> new Complex(Math.abs(w * c) / q, w * c).reciprocal()),
    PARALLEL_C_G(Holds.IMPEDANCE, ColumnKind.PARALLEL_CAPACITANCE, ColumnKind.CONDUCTANCE,
            (w, c, g) -> new Complex(g, w * c).reciprocal()),
    PARALLEL_C_R(Holds.IMPEDANCE, ColumnKind.PARALLEL_CAPACITANCE, ColumnKind.PARALLEL_RESISTANCE,
            (w, c, r) -> new Complex(1 / r, w * c).reciprocal()),
    ADMITTANCE(Holds.IMPEDANCE, ColumnKind.CONDUCTANCE, ColumnKind.SUSCEPTANCE,
            (w, g, b) -> new Complex(g, b).reciprocal()),
    ADMITTANCE_POLAR(Holds.IMPEDANCE, ColumnKind.ADMITTANCE_MAGNITUDE, ColumnKind.ADMITTANCE_PHASE,
            (w, magnitude, phase) -> Complex.polar(magnitude, phase).reciprocal()),
    S11(Holds.S11, ColumnKind.S11_REAL, ColumnKind.S11_IMAGINARY, (w, re, im) -> new Complex(re, im)),
    S11_POLAR(Holds.S11, ColumnKind.S11_MAGNITUDE, ColumnKind.S11_PHASE, (w, magnitude, phase) -> Complex.polar(magnitude, phase)),
    S11_LEVEL(Holds.S11, ColumnKind.S11_DECIBEL, ColumnKind.S11_PHASE, (w, level, phase) -> ofDecibel(level, phase)),
    S21(Holds.S21, ColumnKind.S21_REAL, ColumnKind.S21_IMAGINARY, (w, re, im) -> new Complex(re, im)),
    S21_POLAR(Holds.S21, ColumnKind.S21_MAGNITUDE, ColumnKind.S21_PHASE, (w, magnitude, phase) -> Complex.polar(magnitude, phase)),
    S21_LEVEL(Holds.S21, ColumnKind.S21_DECIBEL, ColumnKind.S21_PHASE, (w, level, phase) -> ofDecibel(level, phase));

    /** What a pair makes, and with which fixtures that goes together. */
    enum Holds {
        IMPEDANCE("an impedance", EnumSet.allOf(Fixture.class)),
        S11("S11", Set.of(Fixture.REFLECTION)),
        S21("S21", Set.of(Fixture.SHUNT_THROUGH, Fixture.SERIES_THROUGH));

        private final String words;
        private final Set<Fixture> fixtures;

        Holds(String words, Set<Fixture> fixtures) {
            this.words = words;
            this.fixtures = fixtures;
        }

        String words() {
            return words;
        }

        boolean suits(Fixture fixture) {
            return fixtures.contains(fixture);
        }

        /** Whether the fixture's own quantity is meant; an impedance goes with every fixture, nothing is converted then. */
        boolean isMadeFor(Fixture fixture) {
            return this == IMPEDANCE ? fixture == Fixture.IMPEDANCE : suits(fixture);
        }

        /** The fixtures to choose from, for a refusal. */
        String choices() {
            return switch (this) {
                case IMPEDANCE -> Fixture.IMPEDANCE.label();
                case S11 -> Fixture.REFLECTION.label();
                case S21 -> Fixture.SHUNT_THROUGH.label() + " or " + Fixture.SERIES_THROUGH.label();
            };
        }
    }

    @FunctionalInterface
    private interface Formula {
        Complex value(double omega, double first, double second);
    }

    private final Holds holds;
    private final ColumnKind first;
    private final ColumnKind second;
    private final Formula formula;

    ColumnPair(Holds holds, ColumnKind first, ColumnKind second, Formula formula) {
        this.holds = holds;
        this.first = first;
        this.second = second;
        this.formula = formula;
    }

    Holds holds() {
        return holds;
    }

    ColumnKind first() {
        return first;
    }

    ColumnKind second() {
        return second;
    }

    /** The preferred pair among the kinds that are there. */
    static Optional<ColumnPair> among(Set<ColumnKind> kinds) {
        return among(kinds, pair -> true);
    }

    static Optional<ColumnPair> among(Set<ColumnKind> kinds, Predicate<ColumnPair> condition) {
        return Arrays.stream(values())
                .filter(pair -> kinds.contains(pair.first) && kinds.contains(pair.second) && condition.test(pair))
                .findFirst();
    }

    Complex value(double frequencyHz, double firstValue, double secondValue) {
        return formula.value(2 * Math.PI * frequencyHz, firstValue, secondValue);
    }

    private static Complex ofDecibel(double level, double phase) {
        return Complex.polar(Math.pow(10, level / 20), phase);
    }
}
