package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankCurves;
import org.stillrail.electrical.bank.BankFigure;
import org.stillrail.electrical.bank.BranchEffect;
import org.stillrail.electrical.bank.CarrierRibbon;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Extrema;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;

/**
 * Every figure of a bank on its rail, a pure function of the input.
 *
 * @param curves      on the grid of the charts
 * @param atCrossover the bank at the crossover
 * @param atSwitching the bank at the switching frequency
 * @param ripple      under the converter's current at nominal input
 * @param effects     what one part more, one fewer and none does
 * @param idle        branches that do next to nothing where it matters
 */
public record Evaluation(
        EvaluationInput input,
        KeyFrequencies frequencies,
        BankCurves curves,
        List<Extremum> extrema,
        CarrierRibbon ribbon,
        Reading atCrossover,
        Reading atSwitching,
        Ripple ripple,
        List<BranchEffect> effects,
        List<IdleBranch> idle,
        List<String> warnings) {

    private static final double LOWEST_HZ = 100;
    private static final double HIGHEST_HZ = 100e6;
    private static final int POINTS = 1000;
    private static final double NEXT_TO_NOTHING = 0.1;
    private static final double HALF = 0.5;

    public static Evaluation evaluate(EvaluationInput input) {
        Bank bank = input.bank();
        KeyFrequencies frequencies = KeyFrequencies.of(input.rail().converter());
        FrequencyGrid grid = FrequencyGrid.logSpaced(
                Math.min(LOWEST_HZ, frequencies.dampingFromHz() / 3), Math.max(HIGHEST_HZ, 3 * frequencies.quietToHz()), POINTS);
        BankCurves curves = bank.on(grid);
        List<Extremum> extrema = bank.extrema(grid.startHz(), grid.stopHz());
        PeriodicCurrent current = current(input.rail());
        Ripple ripple = Ripple.of(bank, current, Ripple.DEFAULT_SAMPLES);
        Set<String> warnings = new LinkedHashSet<>(ripple.warnings());
        if (!frequencies.crossoverGiven()) {
            warnings.add("No crossover is stated; a tenth of the switching frequency stands in for it.");
        }
        return new Evaluation(input, frequencies, curves, extrema, CarrierRibbon.of(bank, curves, extrema),
                reading(bank, frequencies.crossoverHz()), reading(bank, frequencies.switchingHz()), ripple,
                effects(bank, frequencies, current), idle(curves, frequencies), List.copyOf(warnings));
    }

    private static PeriodicCurrent current(RailFigures rail) {
        ConverterFigures converter = rail.converter();
        return new BuckCurrent(rail.input().nominalV(), rail.nominalVoltageV(), converter.inductanceH(), converter.switchingHz(), converter.phases());
    }

    private static Reading reading(Bank bank, double hz) {
        return Reading.of(bank.on(FrequencyGrid.of(hz)));
    }

    private static List<BranchEffect> effects(Bank bank, KeyFrequencies frequencies, PeriodicCurrent current) {
        return BranchEffect.of(bank, List.of(
                new BankFigure("ESR at crossover", "ohm", changed -> changed.at(frequencies.crossoverHz()).resistanceOhm()),
                new BankFigure("|Z| at switching", "ohm", changed -> Math.sqrt(changed.at(frequencies.switchingHz()).squaredMagnitude())),
                new BankFigure("Ripple", "V", changed -> Ripple.quickPeakToPeakV(changed, current))));
    }

    private static List<IdleBranch> idle(BankCurves curves, KeyFrequencies frequencies) {
        List<IdleBranch> idle = new ArrayList<>();
        FrequencyGrid grid = curves.bank().grid();
        for (int k = 0; k < curves.shares().size(); k++) {
            Curve share = curves.shares().get(k);
            double largest = 0;
            Double worksFrom = null;
            for (int i = 0; i < grid.size(); i++) {
                double hz = grid.hz(i);
                double size = share.magnitude(i);
                boolean matters = hz >= frequencies.dampingFromHz() && hz <= frequencies.dampingToHz()
                        || hz >= frequencies.quietFromHz() && hz <= frequencies.quietToHz();
                if (matters) {
                    largest = Math.max(largest, size);
                }
                if (worksFrom == null && size >= HALF) {
                    worksFrom = hz;
                }
            }
            if (largest < NEXT_TO_NOTHING) {
                idle.add(new IdleBranch(k, largest, worksFrom));
            }
        }
        return List.copyOf(idle);
    }
}
