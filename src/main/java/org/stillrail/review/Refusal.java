package org.stillrail.review;

import org.springframework.security.access.AccessDeniedException;

/**
 * Why a person may not take a step.
 *
 * @param sentence for that person
 */
record Refusal(Kind kind, String sentence) {

    /** What the reason lies in. */
    enum Kind {
        /** The person's role, or no member of the project. */
        PERSON,
        /** The person's own part in the work. */
        OWN_WORK,
        /** The state of the revision. */
        STATE,
        /** What changed around the revision: a newer one, or a newer rail. */
        OVERTAKEN
    }

    /** Whether the page says it beside a step that would else be offered. */
    boolean worthSaying() {
        return kind == Kind.OWN_WORK || kind == Kind.OVERTAKEN;
    }

    RuntimeException asException() {
        return switch (kind) {
            case PERSON, OWN_WORK -> new AccessDeniedException(sentence);
            case STATE, OVERTAKEN -> new WrongStepException(sentence);
        };
    }
}
