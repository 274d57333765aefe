package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.electrical.spread.MonteCarlo;
import org.stillrail.electrical.spread.RandomBank;
import org.stillrail.electrical.spread.RandomBranch;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.RandomLimit;
import org.stillrail.electrical.spread.RandomLoop;
import org.stillrail.electrical.spread.Tolerance;

/**
 * How the figures of a bank are spread over production: random banks within the tolerances that its parts and its inductor
 * state, read at the crossover of the nominal bank and at the switching frequency, against those limits of the rail that these
 * figures answer to. A pure function of input and question.
 *
 * @param surroundings what the random banks stand in; its bank is the one where nothing strays
 * @param bank         what is drawn from
 * @param limits       none where the rail sets none
 * @param unknown      what is not stated and so does not stray, or is not modelled, in sentences
 */
public record BankSpread(
        EvaluationInput input, SpreadQuestion question, KeyFrequencies frequencies, Corner surroundings, RandomBank bank, MonteCarlo result,
        List<LimitSpread> limits, List<String> unknown) {

    public BankSpread {
        limits = List.copyOf(limits);
        unknown = List.copyOf(unknown);
    }

    /**
     * @param threads to compute on; the result does not depend on it
     * @throws EvaluationRefusedException where the bank or its rail gives nothing to draw from, saying why
     */
    public static BankSpread of(EvaluationInput input, SpreadQuestion question, int threads) {
        try {
            return draw(input, question, threads);
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new EvaluationRefusedException(e.getMessage(), e);
        }
    }

    private static BankSpread draw(EvaluationInput input, SpreadQuestion question, int threads) {
        Corner surroundings = Corner.surroundings(input, question.ambient(), question.old(), question.input());
        Corner nominal = Corner.surroundings(input, Axis.NOMINAL, false, Axis.NOMINAL);
        Tried<Compensation> compensation = Judgement.compensation(input.rail(), nominal.bank());
        RandomLoop loop = compensation == null ? null : loop(input.rail(), compensation, nominal, surroundings);
        KeyFrequencies frequencies = KeyFrequencies.of(input.rail().converter(), loop == null ? null : loop.crossoverHz());
        List<String> unknown = new ArrayList<>();
        Tried<PeriodicCurrent> current = Tried.of(() -> surroundings.current(input.rail()));
        if (!current.answered()) {
            unknown.add("The ripple is not known: " + current.refusal() + ".");
        } else if (current.value() == null) {
            unknown.add("The ripple is not modelled: " + Words.WITHOUT_TURNS + ".");
        }
        RandomLoop drawn = input.distance() == null ? loop : null;
        RandomBank bank = bank(input, question, surroundings, current.value(), frequencies, drawn);
        List<LimitSpread> asked = new ArrayList<>(limits(input, surroundings.bank(), current.value(), frequencies, drawn));
        Double nominalRippleV = rippleV(surroundings.bank(), current.value());
        List<JudgedFigures> further = new ArrayList<>();
        if (question.stress()) {
            further.add(new StressSpread(input, surroundings, nominalRippleV));
        }
        if (question.loadStep()) {
            further.add(new DynamicSpread(input, surroundings, compensation, nominalRippleV));
        }
        further.forEach(each -> {
            asked.addAll(each.limits());
            unknown.addAll(each.unknown());
        });
        List<RandomLimit> judged = asked.stream().filter(each -> each.unknown() == null).map(LimitSpread::limit).toList();
        MonteCarlo result = MonteCarlo.of(bank, further, judged, question.runs(), question.seed(), threads);
        List<LimitSpread> limits = new ArrayList<>();
        int next = 0;
        for (LimitSpread each : asked) {
            limits.add(each.unknown() != null ? each
                    : new LimitSpread(each.name(), each.limit(), result.yields().get(next++).yield(), null));
        }
        unknown.addAll(notStated(input));
        if (loop != null && drawn == null && !question.loadStep()) {
            unknown.add("The loop of a bank at two nodes is drawn with the load step only.");
        }
        for (FigureSpread figure : result.figures()) {
            if (figure.runs() < question.runs()) {
                unknown.add(figure.figure().label() + " of " + (question.runs() - figure.runs()) + " of " + question.runs()
                        + " banks is not known; they count as banks that do not keep its limit.");
            }
        }
        notDrawn(question).ifPresent(unknown::add);
        return new BankSpread(input, question, frequencies, surroundings, bank, result, limits, unknown.stream().distinct().toList());
    }

    private static Optional<String> notDrawn(SpreadQuestion question) {
        List<String> left = new ArrayList<>();
        if (!question.loadStep()) {
            left.add("load step, window, bulk charge, gain margin, start-up, reverse voltage");
        }
        if (!question.stress()) {
            left.add("ripple current, temperature, life, voltage rating");
        }
        return left.isEmpty() ? Optional.empty()
                : Optional.of("Not drawn: " + String.join(", ", left) + ". Nobody knows how many of these banks keep those limits.");
    }

    private static Double rippleV(Bank nominal, PeriodicCurrent current) {
        return current == null ? null : (Double) Ripple.quickPeakToPeakV(nominal, current);
    }

    /** With nothing astray it crosses where all random banks are read; null where there is none, or no crossover. */
    private static RandomLoop loop(RailFigures rail, Tried<Compensation> compensation, Corner nominal, Corner surroundings) {
        Tried<RandomLoop> loop = compensation.then(placed -> {
            Double crossoverHz = LoopBand.of(nominal.bank(), placed.at(nominal, rail), placed.wantedHz()).crossoverHz();
            return crossoverHz == null ? null : new RandomLoop(placed.at(surroundings, rail), crossoverHz, placed.wantedHz(), LoopBand.SPREAD);
        });
        return loop.value();
    }

    private static RandomBank bank(
            EvaluationInput input, SpreadQuestion question, Corner surroundings, PeriodicCurrent current, KeyFrequencies frequencies, RandomLoop loop) {
        List<RandomBranch> branches = new ArrayList<>();
        for (int k = 0; k < input.branches().size(); k++) {
            PartInput part = input.branches().get(k).part();
            BentPart bent = surroundings.parts().get(k);
            Tolerance capacitance = part.leastDeviation() == null ? Tolerance.NONE
                    : new Tolerance(part.leastDeviation(), part.mostDeviation(), question.shape());
            Tolerance resistance = new Tolerance(deviation(part.leastResistance()), deviation(part.mostResistance()), question.shape());
            branches.add(new RandomBranch(
                    surroundings.bank().branches().get(k), bent.capacitanceF(), capacitance, resistance, resistanceHz(part.characteristics())));
        }
        double inductance = input.rail().converter().topology() == Topology.BUCK ? input.rail().converter().inductanceTolerancePercent() / 100 : 0;
        return new RandomBank(branches, question.lots(), current, new Tolerance(-inductance, inductance, question.shape()),
                frequencies.crossoverHz(), frequencies.switchingHz(), input.distance(), loop);
    }

    private static double deviation(Double factor) {
        return factor == null ? 0 : factor - 1;
    }

    private static double resistanceHz(Characteristics characteristics) {
        return characteristics.resistance() == null ? Characteristics.USUAL_RESISTANCE_HZ : characteristics.resistance().frequencyHz();
    }

    private static List<LimitSpread> limits(
            EvaluationInput input, Bank nominal, PeriodicCurrent current, KeyFrequencies frequencies, RandomLoop loop) {
        RailFigures rail = input.rail();
        List<LimitSpread> limits = new ArrayList<>();
        boolean apart = input.distance() != null;
        RandomFigure resistance = apart ? RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER : RandomFigure.ESR_AT_CROSSOVER;
        if (rail.ripple() != null && current != null) {
            limits.add(limit("Ripple", RandomFigure.RIPPLE, Bound.AT_MOST, rail.ripple().peakToPeakV()));
            QuietHarmonic.of(nominal, current, rail.ripple().peakToPeakV()).stream().filter(harmonic -> harmonic.order() == 1)
                    .forEach(first -> limits.add(limit("Quiet band at the switching frequency",
                            apart ? RandomFigure.TRANSFER_AT_SWITCHING : RandomFigure.IMPEDANCE_AT_SWITCHING, Bound.AT_MOST, first.limitOhm())));
        }
        EsrWindow window = rail.esrWindow();
        if (window != null && window.minimumOhm() != null && window.minimumOhm() > 0) {
            limits.add(bounded(input, nominal, frequencies, limit("ESR at crossover, smallest", resistance, Bound.AT_LEAST, window.minimumOhm())));
        }
        if (window != null && window.maximumOhm() != null) {
            limits.add(limit("ESR at crossover, largest", resistance, Bound.AT_MOST, window.maximumOhm()));
        }
        if (loop != null) {
            limits.add(bounded(input, nominal, frequencies,
                    limit("Damping", RandomFigure.SENSITIVITY_PEAK, Bound.AT_MOST, input.settings().largestSensitivityPeak())));
            if (rail.margins() != null && rail.margins().leastPhaseDeg() != null) {
                limits.add(bounded(input, nominal, frequencies,
                        limit("Phase margin", RandomFigure.PHASE_MARGIN, Bound.AT_LEAST, rail.margins().leastPhaseDeg())));
            }
        }
        return limits;
    }

    /** Where nobody knows how small the ESR of a branch may be, nobody knows how many banks keep enough of it. */
    private static LimitSpread bounded(EvaluationInput input, Bank nominal, KeyFrequencies frequencies, LimitSpread limit) {
        Integer unbounded = DampingJudge.withoutLeastResistance(input.branches(), nominal, frequencies.crossoverHz());
        return unbounded == null ? limit : new LimitSpread(limit.name(), limit.limit(), null,
                "No smallest ESR is known of " + Carrier.name(nominal, unbounded) + ", which carries current at the crossover.");
    }

    private static LimitSpread limit(String name, RandomFigure figure, Bound bound, double limit) {
        return new LimitSpread(name, new RandomLimit(figure, bound, limit), null, null);
    }

    private static List<String> notStated(EvaluationInput input) {
        List<String> sentences = new ArrayList<>();
        for (BranchInput branch : input.branches()) {
            String name = "'" + branch.label() + "'";
            if (branch.part().leastDeviation() == null) {
                sentences.add("No tolerance of the capacitance is stated for " + name + ": it does not stray.");
            }
            if (branch.part().leastResistance() == null) {
                sentences.add("No smallest ESR is stated for " + name + ": its ESR is never below that of its model.");
            }
            if (branch.part().mostResistance() == null) {
                sentences.add("No largest ESR is stated for " + name + ": its ESR is never above that of its model.");
            }
        }
        if (input.rail().converter().topology() == Topology.DRAWN) {
            sentences.add("The converter's current is the one that the rail draws: it does not stray.");
        } else if (input.rail().converter().inductanceTolerancePercent() == 0) {
            sentences.add("The rail states no tolerance of the inductor: it does not stray.");
        } else if (input.rail().converter().topology() != Topology.BUCK) {
            sentences.add("The inductor of a " + input.rail().converter().topology().label() + " converter does not stray here: of its current only the "
                    + "ripple goes with the inverse of the inductance, not the pulse that feeds the load.");
        }
        return sentences;
    }
}
