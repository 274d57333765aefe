package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;

/** From the bank of a checked request to the bank that is calculated with. */
@Component
class BankResolver {

    /** Only tells at which frequency a capacitance without a loss tangent holds, which then is every frequency. */
    private static final double ANY_HZ = 1000;

    private final PartSource parts;

    BankResolver(PartSource parts) {
        this.parts = parts;
    }

    /** @throws BadInputException naming every part number that the library does not hold */
    ResolvedBank resolve(BankInput input, OperatingPointInput operatingPoint) {
        OperatingPoint point = OperatingPointInput.toPoint(operatingPoint);
        FieldProblems problems = new FieldProblems();
        List<String> warnings = new ArrayList<>();
        List<Branch> branches = new ArrayList<>();
        for (int i = 0; i < input.branches().size(); i++) {
            BranchInput branch = input.branches().get(i);
            String label = branch.label() == null ? "branch " + (i + 1) : branch.label();
            ImpedanceModel model = branch.model() == null
                    ? named(branch.part(), label, point, "bank.branches[" + i + "].part", warnings, problems)
                    : inline(branch.model());
            if (model != null) {
                branches.add(new Branch(label, branch.count(), model, path(branch.mounting()), path(branch.shared())));
            }
        }
        problems.refuseIfAny();
        if (operatingPoint != null && input.branches().stream().anyMatch(branch -> branch.model() != null)) {
            warnings.add("The operating point has no effect on inline models; it applies to library parts only.");
        }
        return new ResolvedBank(new Bank(branches), warnings);
    }

    private ImpedanceModel named(
            String partNumber, String label, OperatingPoint point, String path, List<String> warnings, FieldProblems problems) {
        Optional<PartSource.NamedPart> part = parts.find(partNumber, point);
        if (part.isEmpty()) {
            problems.add(path, "is not a part number of the library: '" + partNumber + "'");
            return null;
        }
        part.get().warnings().forEach(warning -> warnings.add("Branch '" + label + "': " + warning));
        return part.get().model();
    }

    static ImpedanceModel inline(ModelInput input) {
        if (input instanceof SeriesRlcInput rlc) {
            return new SeriesRlc(rlc.capacitanceF(), rlc.resistanceOhm(), rlc.inductanceH());
        }
        if (input instanceof TableInput table) {
            return TableModel.of(table.frequencyHz(), table.resistanceOhm(), table.reactanceOhm());
        }
        DatasheetInput sheet = (DatasheetInput) input;
        double tangentHz = sheet.lossTangentFrequencyHz() == null ? ANY_HZ : sheet.lossTangentFrequencyHz();
        LossFigures figures = new LossFigures(
                sheet.capacitanceF(), sheet.lossTangent(), tangentHz, sheet.resistanceOhm(), sheet.resistanceFrequencyHz());
        return DatasheetModel.of(figures, sheet.inductanceH());
    }

    private static SeriesPath path(SeriesPathInput input) {
        return input == null ? SeriesPath.NONE : new SeriesPath(orZero(input.resistanceOhm()), orZero(input.inductanceH()));
    }

    private static double orZero(Double value) {
        return value == null ? 0 : value;
    }
}
