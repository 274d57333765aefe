package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.web.Computing;

/** The steady-state ripple of a bank under a periodic current. */
@Component
class RippleCalculation {

    private final BankResolver resolver;
    private final Computing computing;

    RippleCalculation(BankResolver resolver, Computing computing) {
        this.resolver = resolver;
        this.computing = computing;
    }

    RippleAnswer answer(RippleRequest request) {
        ResolvedBank resolved = resolver.resolve(request.bank(), request.operatingPoint());
        PeriodicCurrent current = current(request.current());
        int samples = request.samples() == null ? Ripple.DEFAULT_SAMPLES : request.samples();
        return computing.within(() -> calculate(resolved, current, samples));
    }

    private static PeriodicCurrent current(CurrentInput input) {
        if (input instanceof BuckInput buck) {
            return new BuckCurrent(buck.inputV(), buck.outputV(), buck.inductanceH(), buck.switchingHz(),
                    buck.phases() == null ? 1 : buck.phases());
        }
        PiecewiseLinearInput corners = (PiecewiseLinearInput) input;
        return PiecewiseLinearCurrent.of(corners.periodS(), corners.timeS(), corners.currentA());
    }

    private static RippleAnswer calculate(ResolvedBank resolved, PeriodicCurrent current, int samples) {
        Ripple ripple;
        try {
            ripple = Ripple.of(resolved.interruptible(), current, samples);
        } catch (LosslessResonanceException e) {
            throw new BadInputException("bank", e.getMessage());
        }
        List<String> warnings = new ArrayList<>(resolved.warnings());
        warnings.addAll(ripple.warnings());
        return new RippleAnswer(
                ripple.peakToPeakV(),
                ripple.rmsV(),
                ripple.voltage().timesS(),
                ripple.voltage().voltagesV(),
                ripple.inductorPeakToPeakA(),
                ripple.branches().stream()
                        .map(branch -> new RippleAnswer.BranchHeat(
                                branch.label(), branch.rmsA(), branch.perPartRmsA(), branch.perPartDissipationW(),
                                branch.mountingDissipationW(), branch.sharedDissipationW()))
                        .toList(),
                warnings);
    }
}
