package org.stillrail.bank;

import java.nio.charset.StandardCharsets;
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

    /** As a sentence for a page or the head of a file. */
    public String origin() {
        return (frozen ? "Worked out from what was frozen when this revision was submitted"
                : "Worked out from this revision with the sweeps and the team's settings of today") + "; SHA-256 of the input " + sha256();
    }
}
