package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;

/**
 * What the verdicts need to know of a bank at one corner. A part that the rail does not ask for, or that the converter's
 * kind does not allow, is null.
 *
 * @param ripplePeakToPeakV at the load; null for a converter whose current is not modelled
 * @param rippleAtConverterV peak to peak at the converter's node; null at one node, and where it is not known
 * @param quiet             empty where no ripple limit is set
 * @param loop              null without a control
 * @param steps             null without a control or a load step
 * @param need              null without a load step
 */
record CornerFigures(
        Corner corner, Bank bank, Tried<Double> ripplePeakToPeakV, List<QuietHarmonic> quiet, Tried<LoopBand> loop, Tried<StepPair> steps,
        Tried<ChargeNeed> need, Double rippleAtConverterV) {

    private static final int FEWEST_SAMPLES = 2;

    /** @param compensation null without a control */
    static CornerFigures of(RailFigures rail, Corner corner, Bank bank, Tried<Compensation> compensation, Probe probe) {
        Tried<PeriodicCurrent> current = Tried.of(() -> corner.current(rail));
        boolean known = !current.answered() || current.value() != null;
        Tried<Double> ripple = known ? current.then(each -> ripplePeakToPeakV(bank, each, probe)) : null;
        Double atConverter = bank.distance() == null || ripple == null || !ripple.answered() ? null
                : Ripple.quickAtConverterV(bank, current.value());
        List<QuietHarmonic> quiet = rail.ripple() == null || ripple == null || !ripple.answered() ? List.of()
                : QuietHarmonic.of(bank, current.value(), rail.ripple().peakToPeakV());
        if (rail.converter().topology() != Topology.BUCK) {
            return new CornerFigures(corner, bank, ripple, quiet, null, null, null, atConverter);
        }
        Tried<ChargeNeed> need = rail.loadStep() == null ? null : Tried.of(() -> ChargeNeed.of(corner.stage(rail), rail.loadStep()));
        if (compensation == null) {
            return new CornerFigures(corner, bank, ripple, quiet, null, null, need, atConverter);
        }
        Tried<LoopBand> loop = probe.wants(Probe.Item.LOOP)
                ? compensation.then(placed -> LoopBand.of(bank, placed.at(corner, rail), placed.wantedHz())) : probe.known().loop();
        Tried<StepPair> steps = rail.loadStep() == null ? null : probe.exhausted() != null ? probe.exhausted()
                : !compensation.answered() ? Tried.refused(compensation.refusal())
                : loop.then(band -> steps(rail, corner, bank, compensation.value().at(corner, rail), band, probe));
        return new CornerFigures(corner, bank, ripple, quiet, loop, steps, need, atConverter);
    }

    private static double exactRippleV(Bank bank, PeriodicCurrent current) {
        return Ripple.of(bank, current, FEWEST_SAMPLES).peakToPeakV();
    }

    /** With the ripple to the last digit instead of to a thousandth. */
    CornerFigures withExactRipple(RailFigures rail) {
        return new CornerFigures(corner, bank, Tried.of(() -> exactRippleV(bank, corner.current(rail))), quiet, loop, steps, need, rippleAtConverterV);
    }

    /** To the last digit where it is shown, to a thousandth where it only looks for the worst. */
    private static double ripplePeakToPeakV(Bank bank, PeriodicCurrent current, Probe probe) {
        if (!probe.wants(Probe.Item.RIPPLE)) {
            return probe.known().ripplePeakToPeakV().value();
        }
        return probe.exactRipple() ? exactRippleV(bank, current) : Ripple.quickPeakToPeakV(bank, current);
    }

    private static StepPair steps(RailFigures rail, Corner corner, Bank bank, Converter converter, LoopBand band, Probe probe) {
        if (!band.stable()) {
            throw new IllegalArgumentException("The closed loop is unstable");
        }
        StepPair known = probe.known() == null || !probe.known().steps().answered() ? null : probe.known().steps().value();
        double crossoverHz = KeyFrequencies.of(rail.converter(), band.crossoverHz()).crossoverHz();
        double durationS = StepPair.durationS(converter.stage(), rail.loadStep(), crossoverHz);
        Bank inTime = StepPair.inTime(bank, crossoverHz);
        boolean step = known == null || probe.wants(Probe.Item.STEP);
        boolean release = known == null || probe.wants(Probe.Item.RELEASE);
        return new StepPair(
                step ? StepPair.step(inTime, converter, rail.loadStep(), durationS, probe.samples()) : known.step(),
                release ? StepPair.release(inTime, converter, rail.loadStep(), durationS, probe.samples()) : known.release());
    }

    /** With the crossover at this corner, wished or usual where the loop is not known. */
    KeyFrequencies frequencies(RailFigures rail) {
        return KeyFrequencies.of(rail.converter(), loop != null && loop.answered() ? loop.value().crossoverHz() : null);
    }

    double crossoverHz(RailFigures rail) {
        return frequencies(rail).crossoverHz();
    }
}
