package org.stillrail.bank.bench;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bench.ErrorBand;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.KeyFrequencies;
import org.stillrail.web.Quantity;

/** The prediction of a bank for the conditions that a bench measurement was made under. */
final class Predicted {

    /** A tenth of a decade to either side of a resonance. */
    private static final double ROUND_RESONANCE = Math.pow(10, 0.1);
    private static final int MOST_RESONANCES = 6;

    private Predicted() {
    }

    /** Every part as it is modelled, bent to the bias and temperature of the bench. */
    static Bank bank(EvaluationInput input, double biasV, double temperatureC) {
        OperatingPoint point = new OperatingPoint(biasV, temperatureC, null);
        List<Branch> branches = new ArrayList<>();
        for (BranchInput branch : input.branches()) {
            branches.add(branch.branch(branch.part().at(point, PlaceInBand.AS_MODELLED).model()));
        }
        return new Bank(branches, input.distance());
    }

    /** The whole sweep, the damping band, the quiet band, and round each resonance of the prediction. */
    static List<ErrorBand> bands(Bank bank, KeyFrequencies frequencies, double fromHz, double toHz) {
        List<ErrorBand> bands = new ArrayList<>();
        bands.add(new ErrorBand("whole sweep", fromHz, toHz));
        bands.add(new ErrorBand("damping band", frequencies.dampingFromHz(), frequencies.dampingToHz()));
        bands.add(new ErrorBand("quiet band", frequencies.quietFromHz(), frequencies.quietToHz()));
        if (toHz > fromHz) {
            for (Extremum extremum : bank.extrema(fromHz, toHz).stream().limit(MOST_RESONANCES).toList()) {
                double hz = extremum.frequencyHz();
                bands.add(new ErrorBand("round the resonance at " + Quantity.format(hz, "Hz", 3), hz / ROUND_RESONANCE, hz * ROUND_RESONANCE));
            }
        }
        return bands;
    }
}
