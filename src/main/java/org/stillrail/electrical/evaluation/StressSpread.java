package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.spread.DrawnFigure;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.RandomLimit;
import org.stillrail.electrical.spread.Strays;
import org.stillrail.electrical.stress.PartStress;

/**
 * What the parts of random banks bear, by the road of the verdicts: each bank is a corner of its own, with its parts' capacitance and ESR where they strayed to
 * and as warm as those of the nominal bank, and the same judges look at it.
 */
final class StressSpread extends JudgedFigures {

    private final EvaluationInput input;
    private final Fitting fitting;
    private final Corner surroundings;
    private final VoltageRatingJudge voltage;

    /** @param nominalRippleV peak to peak where nothing strays, null where it is not known */
    StressSpread(EvaluationInput input, Corner surroundings, Double nominalRippleV) {
        this.fitting = Fitting.named(input);
        this.input = fitting.input();
        this.surroundings = surroundings;
        this.voltage = new VoltageRatingJudge(this.input);
        CornerFigures nominal = at(surroundings, nominalRippleV);
        RippleCurrentJudge current = new RippleCurrentJudge(this.input);
        TemperatureJudge temperature = new TemperatureJudge(this.input);
        LifeJudge life = new LifeJudge(this.input);
        for (int k = 0; k < input.branches().size(); k++) {
            PartStress stress = nominal.stressOf(k);
            add(RandomFigure.RIPPLE_CURRENT, k, stress != null && stress.ripple() != null, current.at(nominal, k));
            add(RandomFigure.CORE_TEMPERATURE, k, stress != null && stress.heat() != null, temperature.at(nominal, k));
            add(RandomFigure.LIFE, k, stress != null && stress.life().modelled() && input.rail().life() != null, life.at(nominal, k));
            addVoltage(k, voltage.at(nominal, k));
        }
    }

    /** @param known whether the figure is, whatever the verdict on it */
    private void add(RandomFigure kind, int branch, boolean known, Verdict verdict) {
        if (known) {
            figures.add(figure(kind, branch));
        }
        if (known && judged(verdict)) {
            limit(kind, branch, verdict.limit(), verdict);
        } else if (verdict.outcome() == Outcome.UNKNOWN || verdict.outcome() == Outcome.NOT_MODELLED) {
            addUnknown(verdict);
        }
    }

    /** Its limit goes with the warmth of the core, so what is drawn is the share of it. */
    private void addVoltage(int branch, Verdict verdict) {
        if (judged(verdict) && verdict.bound() == Bound.AT_MOST) {
            figures.add(figure(RandomFigure.VOLTAGE_SHARE, branch));
            limit(RandomFigure.VOLTAGE_SHARE, branch, 1, verdict);
        } else if (verdict.outcome() == Outcome.UNKNOWN || judged(verdict)) {
            addUnknown(verdict);
        }
    }

    private void limit(RandomFigure kind, int branch, double limit, Verdict verdict) {
        limits.add(new LimitSpread(verdict.requirement().label() + " of '" + input.branches().get(branch).label() + "'",
                new RandomLimit(figure(kind, branch), verdict.bound(), limit), null, null));
    }

    private DrawnFigure figure(RandomFigure kind, int branch) {
        return new DrawnFigure(kind, branch, input.branches().get(branch).label());
    }

    private static boolean judged(Verdict verdict) {
        return verdict.limit() != null && (verdict.outcome() == Outcome.MET || verdict.outcome() == Outcome.NOT_MET);
    }

    @Override
    public double[] of(Strays strays, double rippleV) {
        CornerFigures drawn = at(surroundings.straying(strays, fitting), Double.isNaN(rippleV) ? null : (Double) rippleV);
        return figures.stream().mapToDouble(figure -> value(figure, drawn)).toArray();
    }

    private double value(DrawnFigure figure, CornerFigures drawn) {
        if (figure.kind() == RandomFigure.VOLTAGE_SHARE) {
            Verdict verdict = voltage.at(drawn, figure.branch());
            return judged(verdict) && verdict.limit() > 0 ? verdict.value() / verdict.limit() : Double.NaN;
        }
        PartStress stress = drawn.stressOf(figure.branch());
        if (stress == null) {
            return Double.NaN;
        }
        Double value = switch (figure.kind()) {
            case RIPPLE_CURRENT -> (Double) stress.ripple().equivalentA();
            case LIFE -> stress.life().hours();
            default -> stress.heat().coreC();
        };
        return value == null ? Double.NaN : value;
    }

    private CornerFigures at(Corner corner, Double rippleV) {
        Bank bank = corner.bank();
        Double atConverter = rippleV == null ? null : rippleAtConverterV(input, corner);
        return new CornerFigures(corner, bank, rippleV == null ? null : Tried.answer(rippleV), List.of(), null, null, null, atConverter, null,
                CornerStress.of(input, corner, bank));
    }

    /** Null at one node, and where no branch stands at the converter's. */
    static Double rippleAtConverterV(EvaluationInput input, Corner corner) {
        Bank bank = corner.bank();
        return bank.distance() == null || bank.connectedTo(Node.CONVERTER).isEmpty() ? null
                : (Double) Ripple.quickAtConverterV(bank, corner.current(input.rail()));
    }
}
