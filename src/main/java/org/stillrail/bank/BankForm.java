package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/**
 * Between the fields of the bank page and a {@link BankDocument}. Branch i has fields that begin with {@code b} and i, such
 * as {@code b0.count}; there is a branch where there is a field {@code bi.part}.
 */
final class BankForm {

    static final int MOST_BRANCHES = 16;
    static final String INLINE = "inline";

    private static final int MOST_PARTS = 999;
    private static final double ANY_RAMP_V = 1;

    private final Form form;
    private final Library library;

    private BankForm(Form form, Library library) {
        this.form = form;
        this.library = library;
    }

    /**
     * Reads every field; where any is wrong, {@code form.errors()} says which and null is returned.
     *
     * @param railRevisionId null for a scratch bank, whose few figures are then read from the form
     */
    static BankDocument read(Form form, UUID railRevisionId, Library library) {
        return new BankForm(form, library).document(railRevisionId);
    }

    /** Indices of the branches that the form holds, in order. */
    static List<Integer> indices(Form form) {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < MOST_BRANCHES; i++) {
            if (form.get("b" + i + ".part") != null) {
                indices.add(i);
            }
        }
        return indices;
    }

    private BankDocument document(UUID railRevisionId) {
        PartField.settle(form, library);
        RailFigures scratch = railRevisionId == null ? scratchRail() : null;
        List<BranchDocument> branches = new ArrayList<>();
        for (int i : indices(form)) {
            String who = "Branch " + (branches.size() + 1) + ": ";
            branches.add(AlternatesForm.read(branch("b" + i + ".", who), form, "b" + i + ".", who, library));
        }
        Distance distance = DistanceForm.read(form);
        if (branches.isEmpty()) {
            form.errors().add("", "A bank needs at least one branch.");
        }
        String note = form.text("note", "Note", false);
        return form.errors().none() ? new BankDocument(railRevisionId, scratch, branches, note, distance) : null;
    }

    private BranchDocument branch(String b, String who) {
        String label = form.text(b + "label", who + "name", true);
        Integer count = form.whole(b + "count", who + "count", 1, MOST_PARTS, true);
        SeriesPath mounting = path(b + "mounting", who + "mounting");
        SeriesPath shared = path(b + "shared", who + "shared path");
        Node node = DistanceForm.node(form, b, who);
        MountingOrigin origin = new MountingForm(form, b, who).read(mounting, library);
        if (INLINE.equals(form.get(b + "part"))) {
            Double c = form.positive(b + "capacitance", who + "capacitance", "F", true);
            Double r = form.notNegative(b + "resistance", who + "ESR", "ohm", true);
            Double l = form.notNegative(b + "inductance", who + "ESL", "H", true);
            return label == null || count == null || c == null || r == null || l == null ? null
                    : new BranchDocument(label, count, null, null, new SeriesRlc(c, r, l), mounting, shared).placed(node, origin);
        }
        Part part = form.read(b + "part", who + "part", true, text -> library.find(UUID.fromString(text))
                .orElseThrow(() -> new IllegalArgumentException(who + "the library has no such part")));
        return label == null || count == null || part == null ? null
                : new BranchDocument(label, count, part.id(), part.revision().id(), null, mounting, shared).placed(node, origin);
    }

    private SeriesPath path(String name, String label) {
        Double r = form.notNegative(name + "R", label + " resistance", "ohm", false);
        Double l = form.notNegative(name + "L", label + " inductance", "H", false);
        return new SeriesPath(r == null ? 0 : r, l == null ? 0 : l);
    }

    private RailFigures scratchRail() {
        Double inputV = form.positive("input", "Input voltage", "V", true);
        Double outputV = form.positive("output", "Output voltage", "V", true);
        Double inductanceH = form.positive("inductor", "Inductance of each phase", "H", true);
        Double switchingHz = form.positive("switching", "Switching frequency", "Hz", true);
        Integer phases = form.whole("phases", "Phases", 1, 32, true);
        Double crossoverHz = form.positive("crossover", "Crossover", "Hz", true);
        Double marginDeg = form.positive("phaseMargin", "Phase margin", "deg", true);
        if (inputV != null && outputV != null && outputV >= inputV) {
            form.errors().add("output", "A buck makes less than its input of " + Quantity.format(inputV, "V"));
        }
        if (!form.errors().none()) {
            return null;
        }
        // The compensator is placed for the wish, so the height of the ramp comes out again.
        ControlFigures control = new ControlFigures(
                ControlFigures.Kind.VOLTAGE_MODE, ANY_RAMP_V, null, null, null, null, null, null, crossoverHz, marginDeg);
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, inductanceH, 0, 0, phases, switchingHz, 0, control, null);
        return new RailFigures(outputV, 0, InputRange.fixed(inputV), converter, null, null, null, null, null, null, null);
    }

    /** Fills the form from a document. */
    static Form fill(BankDocument document, Library library) {
        Form form = Form.empty().with("note", document.note());
        RailFigures scratch = document.scratchRail();
        if (scratch != null) {
            form.with("input", Quantity.entry(scratch.input().nominalV(), "V"))
                    .with("output", Quantity.entry(scratch.nominalVoltageV(), "V"))
                    .with("inductor", Quantity.entry(scratch.converter().inductanceH(), "H"))
                    .with("switching", Quantity.entry(scratch.converter().switchingHz(), "Hz"))
                    .with("phases", Integer.toString(scratch.converter().phases()))
                    .with("crossover", Quantity.entry(scratch.converter().control().crossoverHz(), "Hz"))
                    .with("phaseMargin", Quantity.entry(scratch.converter().control().phaseMarginDeg(), "deg"));
        }
        DistanceForm.fill(form, document);
        for (int i = 0; i < document.branches().size(); i++) {
            fillBranch(form, "b" + i + ".", document.branches().get(i));
            AlternatesForm.fill(form, "b" + i + ".", document.branches().get(i), library);
        }
        return form;
    }

    /** A blank branch at the first free index, or nothing where the bank is full. */
    static void addBranch(Form form) {
        List<Integer> taken = indices(form);
        for (int i = 0; i < MOST_BRANCHES; i++) {
            if (!taken.contains(i)) {
                form.with("b" + i + ".part", INLINE).with("b" + i + ".label", "branch " + (i + 1)).with("b" + i + ".count", "1")
                        .with("b" + i + ".capacitance", "10 uF").with("b" + i + ".resistance", "5 mohm").with("b" + i + ".inductance", "1 nH");
                return;
            }
        }
        form.errors().add("", "A bank has at most " + MOST_BRANCHES + " branches.");
    }

    static Form withoutBranch(Form form, int index) {
        return form.without(name -> name.startsWith("b" + index + "."));
    }

    private static void fillBranch(Form form, String b, BranchDocument branch) {
        form.with(b + "label", branch.label())
                .with(b + "count", Integer.toString(branch.count()))
                .with(b + "mountingR", entry(branch.mounting().resistanceOhm(), "ohm"))
                .with(b + "mountingL", entry(branch.mounting().inductanceH(), "H"))
                .with(b + "sharedR", entry(branch.shared().resistanceOhm(), "ohm"))
                .with(b + "sharedL", entry(branch.shared().inductanceH(), "H"));
        DistanceForm.fillNode(form, b, branch);
        new MountingForm(form, b, "").fill(branch.mountingOrigin());
        if (branch.inline() == null) {
            form.with(b + "part", branch.partId().toString());
        } else {
            form.with(b + "part", INLINE)
                    .with(b + "capacitance", Quantity.entry(branch.inline().capacitanceF(), "F"))
                    .with(b + "resistance", Quantity.entry(branch.inline().resistanceOhm(), "ohm"))
                    .with(b + "inductance", Quantity.entry(branch.inline().inductanceH(), "H"));
        }
    }

    /** A figure that is nothing is a blank field. */
    static String entry(double value, String unit) {
        return value == 0 ? "" : Quantity.entry(value, unit);
    }
}
