package org.stillrail.electrical.ripple;

import java.util.List;
import java.util.OptionalDouble;

/** A periodic current into the output node, in steady state and continuous conduction; its mean is of no account. */
public sealed interface PeriodicCurrent permits BuckCurrent, PiecewiseLinearCurrent {

    /** Length of one period in s: a whole switching period also where interleaved phases repeat sooner. */
    double periodS();

    default double frequencyHz() {
        return 1 / periodS();
    }

    /** The current over one period, its mean taken out. */
    PiecewiseLinear waveform();

    /** Peak-to-peak current in A of one inductor, where the kind of converter knows it. */
    default OptionalDouble inductorPeakToPeakA() {
        return OptionalDouble.empty();
    }

    /** What a reader of the figures should know, in sentences. */
    default List<String> warnings() {
        return List.of();
    }
}
