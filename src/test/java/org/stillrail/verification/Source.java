package org.stillrail.verification;

import java.util.Objects;

/**
 * Where an expected value comes from, and how far that may be trusted.
 *
 * @param citation document and place, or the method of an independent computation
 * @param standing what we did with the document
 */
public record Source(String citation, Standing standing) {

    /** How near we came to the source itself. */
    public enum Standing {
        SEEN("seen"),
        SEEN_SECOND_HAND("seen second-hand"),
        FROM_MEMORY("from memory"),
        COMMON_PRACTICE("common practice, no source"),
        INDEPENDENT("independent computation");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    public Source {
        Objects.requireNonNull(citation);
        Objects.requireNonNull(standing);
    }

    /** The figure was read in the document itself. */
    public static Source seen(String citation) {
        return new Source(citation, Standing.SEEN);
    }

    /** The figure was read in somebody else's copy or quotation of the document. */
    public static Source seenSecondHand(String citation) {
        return new Source(citation, Standing.SEEN_SECOND_HAND);
    }

    /** The document was not opened; the number itself was derived or computed anew. */
    public static Source fromMemory(String citation) {
        return new Source(citation, Standing.FROM_MEMORY);
    }

    /** Everybody does it so; no document is named. */
    public static Source commonPractice(String rule) {
        return new Source(rule, Standing.COMMON_PRACTICE);
    }

    /** Computed by another method, with other code: another solver, quadrature, a closed form derived apart. */
    public static Source independent(String method) {
        return new Source(method, Standing.INDEPENDENT);
    }
}
