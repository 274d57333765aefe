package org.stillrail.bank;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.evaluation.EvaluationInput;

/**
 * What the figures of a bank revision are worked out from when they are taken away or kept.
 *
 * @param frozen whether it is what was submitted; else it is the revision with the library and the team's settings of today
 */
public record RecordedInput(EvaluationInput input, boolean frozen) {

    /** Of the canonical JSON: equal where every figure is. */
    public String sha256() {
        return Sha256.of(CanonicalJson.write(input).getBytes(StandardCharsets.UTF_8));
    }

    /** As a sentence without its stop, for a page or the head of a file. */
    public String origin() {
        return frozen ? "Worked out from what was frozen when this revision was submitted"
                : "Worked out from this revision with the sweeps and the team's settings of today";
    }

    /** Lines for the head of a file: which revision, and what its figures rest on. */
    public List<String> comments(Bank bank) {
        List<String> comments = new ArrayList<>(List.of(
                "Bank " + bank.name() + ", revision " + bank.revision().number() + ", " + bank.state().label(),
                "SHA-256 of the revision: " + bank.revision().sha256(),
                origin(),
                "SHA-256 of that input: " + sha256()));
        input.branches().forEach(branch -> comments.add(branch.count() + " x " + branch.label() + ": " + branch.source()));
        return comments;
    }
}
