package org.stillrail.electrical.step;

import java.util.Objects;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.converter.Converter;

/**
 * What is asked of a load step.
 *
 * @param converter    null for the bank alone: the source's current then stays at the load's {@code fromA}
 * @param durationS    positive
 * @param limited      whether the averaged duty stays in 0 .. 1 (in current mode: the inductor's slew within what the duty
 *                     allows)
 * @param samples      number of times in the answer, both ends included, 2 or more
 * @param settleBandV  half width of the band round the set-point, where the load line leads, for the settling time, null for none
 */
public record StepRequest(
        Bank bank, Converter converter, Load load, double durationS, boolean limited, int samples, Double settleBandV) {

    public static final int DEFAULT_SAMPLES = 1000;
    public static final int MOST_SAMPLES = 200_000;

    public StepRequest {
        Objects.requireNonNull(bank, "bank");
        Objects.requireNonNull(load, "load");
        Require.positive("durationS", durationS);
        if (samples < 2 || samples > MOST_SAMPLES) {
            throw new IllegalArgumentException("samples must be from 2 to " + MOST_SAMPLES + ", not " + samples);
        }
        if (settleBandV != null) {
            Require.positive("settleBandV", settleBandV);
        }
    }

    /** With limits, the default number of samples and no band. */
    public static StepRequest of(Bank bank, Converter converter, Load load, double durationS) {
        return new StepRequest(bank, converter, load, durationS, true, DEFAULT_SAMPLES, null);
    }

    StepRequest back() {
        return new StepRequest(bank, converter, load.back(), durationS, limited, samples, settleBandV);
    }

    public StepRequest unlimited() {
        return new StepRequest(bank, converter, load, durationS, false, samples, settleBandV);
    }

    public StepRequest withSamples(int newSamples) {
        return new StepRequest(bank, converter, load, durationS, limited, newSamples, settleBandV);
    }

    public StepRequest withSettleBandV(double bandV) {
        return new StepRequest(bank, converter, load, durationS, limited, samples, bandV);
    }
}
