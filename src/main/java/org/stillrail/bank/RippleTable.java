package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.RippleAtInput;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.BranchRipple;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.web.Quantity;

/**
 * The ripple at each input voltage of the rail, a row for each figure.
 *
 * @param caption what the figures hold for
 * @param inputs  heads of the columns
 * @param notes   why a column is empty
 */
record RippleTable(String caption, List<String> inputs, List<Row> rows, List<String> notes) {

    /** @param cells in the order of the inputs */
    record Row(String name, List<String> cells) {
    }

    private static final int DIGITS = 3;

    /** Null where there is no ripple to show. */
    static RippleTable of(Evaluation evaluation) {
        List<RippleAtInput> inputs = evaluation.rippleOverInput();
        if (inputs.isEmpty()) {
            return null;
        }
        List<Row> rows = new ArrayList<>();
        boolean two = evaluation.input().distance() != null;
        rows.add(row(inputs, two ? "Ripple " + Node.LOAD.label() : "Ripple", "V", Ripple::peakToPeakV));
        rows.add(row(inputs, "of it by C", "V", ripple -> ripple.fromCapacitance().peakToPeakV()));
        rows.add(row(inputs, "of it by ESR", "V", ripple -> ripple.fromResistance().peakToPeakV()));
        rows.add(row(inputs, "of it by ESL", "V", ripple -> ripple.fromInductance().peakToPeakV()));
        Topology topology = evaluation.input().rail().converter().topology();
        if (topology != Topology.DRAWN) {
            rows.add(row(inputs, (topology == Topology.FLYBACK ? "Primary" : "Inductor") + " of a phase", "A", Ripple::inductorPeakToPeakA));
            rows.add(new Row("Conduction continuous from",
                    inputs.stream().map(each -> cell(each.continuousAboveA(), "A")).toList()));
        }
        List<BranchInput> branches = evaluation.shown().branches();
        for (int k = 0; k < branches.size(); k++) {
            String label = branches.get(k).label();
            int count = branches.get(k).count();
            if (count > 1) {
                rows.add(branch(inputs, k, label + ", all " + count, "A", BranchRipple::rmsA));
            }
            rows.add(branch(inputs, k, label + (count > 1 ? ", each" : ""), "A", BranchRipple::perPartRmsA));
            rows.add(branch(inputs, k, label + (count > 1 ? ", heat in each" : ", heat"), "W", BranchRipple::perPartDissipationW));
        }
        return new RippleTable(caption(evaluation, topology),
                topology == Topology.DRAWN ? List.of("any input") : inputs.stream().map(each -> each.place() + ", " + Quantity.format(each.inputV(), "V")).toList(), List.copyOf(rows),
                inputs.stream().filter(each -> each.refusal() != null).map(each -> Quantity.format(each.inputV(), "V") + ": " + each.refusal() + ".")
                        .toList());
    }

    private static String caption(Evaluation evaluation, Topology topology) {
        String shown = " of the corner shown (" + evaluation.shown().name() + ")";
        return (topology == Topology.DRAWN ? "Ripple under the current that the rail draws, with the parts and the switching frequency" + shown
                : "Ripple over the input voltage, with the parts, the inductor and the switching frequency" + shown + ", for continuous conduction")
                + (topology == Topology.BUCK || topology == Topology.DRAWN ? "" : " at the nominal load of " + Quantity.format(evaluation.input().rail().nominalCurrentA(), "A"))
                + ". Voltages and the inductor's current are peak to peak, currents of branches and parts rms. What C, ESR and ESL make peaks at different moments, so the"
                + " three do not add up to the whole.";
    }

    private static Row row(List<RippleAtInput> inputs, String name, String unit, Function<Ripple, Double> figure) {
        return new Row(name, inputs.stream()
                .map(each -> cell(each.ripple() == null ? null : figure.apply(each.ripple()), unit)).toList());
    }

    private static String cell(Double value, String unit) {
        return value == null ? BankView.show(null, unit) : Quantity.format(value, unit, DIGITS);
    }

    private static Row branch(List<RippleAtInput> inputs, int branch, String name, String unit, Function<BranchRipple, Double> figure) {
        return row(inputs, name, unit, ripple -> figure.apply(ripple.branches().get(branch)));
    }
}
