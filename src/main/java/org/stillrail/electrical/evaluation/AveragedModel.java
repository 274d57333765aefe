package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.step.StepResult;

/** Where the averaged model flatters, over all corners: a fast crossover, and an extremum that it cannot see. */
final class AveragedModel {

    /** Common practice, no source. */
    private static final double CROSSOVER_SHARE = 0.2;

    private AveragedModel() {
    }

    static List<String> warnings(RailFigures rail, List<CornerFigures> corners) {
        List<String> warnings = new ArrayList<>();
        CornerFigures fastest = null;
        CornerFigures earliest = null;
        int fast = 0;
        int early = 0;
        for (CornerFigures each : corners) {
            double switchingHz = each.corner().switchingHz(rail.converter());
            Double crossoverHz = each.loop() == null || !each.loop().answered() ? null : each.loop().value().crossoverHz();
            if (crossoverHz != null && crossoverHz > CROSSOVER_SHARE * switchingHz) {
                fast++;
                fastest = fastest == null || crossoverHz > fastest.loop().value().crossoverHz() ? each : fastest;
            }
            if (each.steps() != null && each.steps().answered() && earliestS(each.steps().value()) * switchingHz < 1) {
                early++;
                earliest = earliest == null || earliestS(each.steps().value()) < earliestS(earliest.steps().value()) ? each : earliest;
            }
        }
        if (fastest != null) {
            warnings.add("The crossover is above a fifth of the switching frequency at " + fast + " of " + corners.size() + " corners, the highest "
                    + Words.quantity(fastest.loop().value().crossoverHz(), "Hz") + Corner.at(fastest.corner().name())
                    + ": the averaged model flatters there; read the output impedance of the bank alone beside it.");
        }
        if (earliest != null) {
            warnings.add("The output turns within one switching period at " + early + " of " + corners.size() + " corners, the earliest after "
                    + Words.quantity(earliestS(earliest.steps().value()), "s") + Corner.at(earliest.corner().name())
                    + ": an averaged model does not see that; read the bank alone beside the load step.");
        }
        return warnings;
    }

    /** When the deeper fall or the higher rise is reached in the earlier of the two responses, in s. */
    private static double earliestS(StepPair pair) {
        return Math.min(extremeAtS(pair.step()), extremeAtS(pair.release()));
    }

    private static double extremeAtS(StepResult response) {
        Double atS = response.undershootV() >= response.overshootV() ? response.undershootAtS() : response.overshootAtS();
        return atS == null ? Double.POSITIVE_INFINITY : atS;
    }
}
