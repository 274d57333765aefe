package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankCurves;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.web.Computing;

/** Impedance of a bank and its branches, current shares and extrema. */
@Component
class ImpedanceCalculation {

    private final BankResolver resolver;
    private final Computing computing;

    ImpedanceCalculation(BankResolver resolver, Computing computing) {
        this.resolver = resolver;
        this.computing = computing;
    }

    ImpedanceAnswer answer(ImpedanceRequest request) {
        ResolvedBank resolved = resolver.resolve(request.bank(), request.operatingPoint());
        return computing.within(() -> calculate(resolved, request.grid().toGrid()));
    }

    private static ImpedanceAnswer calculate(ResolvedBank resolved, FrequencyGrid grid) {
        Bank bank = resolved.interruptible();
        BankCurves curves;
        try {
            curves = bank.on(grid);
        } catch (LosslessResonanceException e) {
            throw new BadInputException("grid", e.getMessage());
        }
        List<String> warnings = new ArrayList<>(resolved.warnings());
        warnings.addAll(bank.warnings(grid.startHz(), grid.stopHz()));
        List<ImpedanceAnswer.ExtremumFound> extrema = grid.size() < 2
                ? List.of()
                : bank.extrema(grid.startHz(), grid.stopHz()).stream().map(extremum -> found(extremum, warnings)).toList();
        Curve z = curves.bank();
        return new ImpedanceAnswer(
                grid.toArray(), z.reals(), z.imaginaries(), z.magnitudes(), z.phasesDeg(), branches(bank, curves), extrema,
                warnings);
    }

    private static List<ImpedanceAnswer.BranchImpedance> branches(Bank bank, BankCurves curves) {
        List<ImpedanceAnswer.BranchImpedance> branches = new ArrayList<>();
        for (int i = 0; i < bank.branches().size(); i++) {
            Curve z = curves.branches().get(i);
            Curve share = curves.shares().get(i);
            branches.add(new ImpedanceAnswer.BranchImpedance(
                    bank.branches().get(i).label(), z.reals(), z.imaginaries(), share.magnitudes(), share.phasesDeg()));
        }
        return branches;
    }

    private static ImpedanceAnswer.ExtremumFound found(Extremum extremum, List<String> warnings) {
        Double magnitude = Finite.orNull(extremum.magnitudeOhm());
        Double quality = Finite.orNull(extremum.qualityFactor());
        String kind = extremum.kind().name().toLowerCase(Locale.ROOT);
        if (quality == null || magnitude == null) {
            warnings.add("Nothing damps the " + kind + " at " + extremum.frequencyHz()
                    + " Hz, so its quality factor has no finite value; give the branches some resistance.");
        }
        return new ImpedanceAnswer.ExtremumFound(kind, extremum.frequencyHz(), magnitude, quality);
    }
}
