package org.stillrail.bank;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.mounting.PathPreset;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/** The fields of the bank page that say what lies between converter and load; field {@code path} is blank in a bank at one node. */
final class DistanceForm {

    private static final String OTHER = "other";

    private DistanceForm() {
    }

    static boolean isUsed(Form form) {
        return !form.isBlank("path");
    }

    /** Null for a bank at one node, and where a field is wrong. */
    static Distance read(Form form) {
        if (!isUsed(form)) {
            return null;
        }
        Double r = form.notNegative("pathR", "Resistance of the path", "ohm", false);
        Double l = form.notNegative("pathL", "Inductance of the path", "H", false);
        Node sense = form.read("sense", "Sense point", true, DistanceForm::node);
        Double c = form.positive("loadC", "Capacitance of the load", "F", false);
        Double loadR = form.notNegative("loadR", "ESR of the load's capacitance", "ohm", false);
        Double loadL = form.notNegative("loadL", "ESL of the load's capacitance", "H", false);
        if (c == null && (loadR != null || loadL != null)) {
            form.errors().add("loadC", "Capacitance of the load is missing");
        }
        SeriesPath path = new SeriesPath(r == null ? 0 : r, l == null ? 0 : l);
        if (path.equals(SeriesPath.NONE) && !form.errors().has("pathR") && !form.errors().has("pathL")) {
            form.errors().add("pathL", "The path between converter and load needs a resistance or an inductance");
        }
        return form.errors().none() ? new Distance(path, sense, c == null ? null : new SeriesRlc(c, loadR == null ? 0 : loadR, loadL == null ? 0 : loadL))
                : null;
    }

    /** Where the branch of this prefix stands; null in a bank at one node. */
    static Node node(Form form, String b, String who) {
        return isUsed(form) ? form.read(b + "node", who + "node", true, DistanceForm::node) : null;
    }

    private static Node node(String text) {
        for (Node node : Node.values()) {
            if (key(node).equals(text)) {
                return node;
            }
        }
        throw new IllegalArgumentException("The nodes are converter and load, not '" + text + "'");
    }

    private static String key(Node node) {
        return node.name().toLowerCase(Locale.ROOT);
    }

    static void fill(Form form, BankDocument document) {
        Distance distance = document.distance();
        if (distance == null) {
            return;
        }
        form.with("path", OTHER).with("pathR", BankForm.entry(distance.path().resistanceOhm(), "ohm")).with("pathL", BankForm.entry(distance.path().inductanceH(), "H"))
                .with("sense", key(distance.sense()));
        for (PathPreset preset : PathPreset.values()) {
            if (preset.path().equals(distance.path())) {
                form.with("path", preset.name());
            }
        }
        if (distance.load() != null) {
            form.with("loadC", BankForm.entry(distance.load().capacitanceF(), "F")).with("loadR", BankForm.entry(distance.load().resistanceOhm(), "ohm"))
                    .with("loadL", BankForm.entry(distance.load().inductanceH(), "H"));
        }
    }

    static void fillNode(Form form, String b, BranchDocument branch) {
        if (branch.node() != null) {
            form.with(b + "node", key(branch.node()));
        }
    }

    /** After another kind of path was chosen: its usual figures, and a node for every branch that has none. */
    static void choose(Form form, List<Integer> branches) {
        if (!isUsed(form)) {
            return;
        }
        for (PathPreset preset : PathPreset.values()) {
            if (preset.name().equals(form.get("path"))) {
                form.with("pathR", Quantity.entry(preset.path().resistanceOhm(), "ohm")).with("pathL", Quantity.entry(preset.path().inductanceH(), "H"));
                form.with("sense", key(preset.sense()));
            }
        }
        if (form.isBlank("sense")) {
            form.with("sense", key(Node.CONVERTER));
        }
        placeAll(form, branches);
    }

    /** A branch that does not say stands at the converter. */
    static void placeAll(Form form, List<Integer> branches) {
        for (int i : branches) {
            if (isUsed(form) && form.isBlank("b" + i + ".node")) {
                form.with("b" + i + ".node", key(Node.CONVERTER));
            }
        }
    }

    static Map<String, String> paths() {
        Map<String, String> paths = new LinkedHashMap<>();
        paths.put("", "nothing: all at one node");
        for (PathPreset preset : PathPreset.values()) {
            paths.put(preset.name(), preset.label());
        }
        paths.put(OTHER, "something else");
        return paths;
    }

    static Map<String, String> nodes() {
        Map<String, String> nodes = new LinkedHashMap<>();
        for (Node node : Node.values()) {
            nodes.put(key(node), node.label());
        }
        return nodes;
    }
}
