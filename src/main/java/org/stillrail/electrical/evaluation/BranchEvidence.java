package org.stillrail.electrical.evaluation;

import java.util.List;

/**
 * How well a branch's model is supported.
 *
 * @param samples   number of measured samples behind it, null where none or nobody counted
 * @param esr       how the source means its ESR, null where it does not say
 * @param estimates what was assumed because the source is silent, in sentences
 */
public record BranchEvidence(Integer samples, EsrMeaning esr, List<String> estimates) {

    public static final BranchEvidence NONE = new BranchEvidence(null, null, List.of());

    /** How a source means the ESR that it states. A maximum is safe for ripple and optimistic for damping. */
    public enum EsrMeaning { MINIMUM, TYPICAL, MAXIMUM }

    public BranchEvidence {
        estimates = estimates == null ? List.of() : List.copyOf(estimates);
    }
}
