package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.web.Quantity;

/** Where the branches of a bank stand and how they are mounted, in words. */
public final class Places {

    private static final int DIGITS = 3;

    private Places() {
    }

    /** What lies between converter and load, then every branch with a mounting or a node; empty where there is nothing to say. */
    public static List<String> sentences(EvaluationInput input) {
        List<String> sentences = new ArrayList<>();
        if (input.distance() != null) {
            sentences.add("Between converter and load lies " + distance(input.distance()) + ". Impedance, ripple and step are those at the load.");
        }
        for (BranchInput branch : input.branches()) {
            String mounting = mounting(branch);
            String node = input.distance() == null ? null : "stands " + branch.node().label();
            if (mounting != null || node != null) {
                sentences.add("'" + branch.label() + "' " + (node == null ? "" : node) + (node == null || mounting == null ? "" : ", ")
                        + (mounting == null ? "" : "is mounted with " + mounting) + ".");
            }
        }
        return sentences;
    }

    /** As in 'between them lies ...'. */
    static String distance(Distance distance) {
        return distance == null ? "nothing" : "a path of " + path(distance.path()) + ", sensed " + distance.sense().label()
                + (distance.load() == null ? "" : ", with " + Quantity.format(distance.load().capacitanceF(), "F", DIGITS) + " fixed at the load");
    }

    /** Of one part, with where it comes from; null where there is none. */
    static String mounting(BranchInput branch) {
        return branch.mounting().equals(SeriesPath.NONE) ? null
                : path(branch.mounting()) + " each, " + (branch.mountingSource() == null ? "typed" : branch.mountingSource());
    }

    static String path(SeriesPath path) {
        return Quantity.format(path.resistanceOhm(), "ohm", DIGITS) + " and " + Quantity.format(path.inductanceH(), "H", DIGITS);
    }
}
