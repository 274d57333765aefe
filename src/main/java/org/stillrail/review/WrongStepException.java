package org.stillrail.review;

import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** A step that the revision does not allow as it stands; nothing was changed. */
class WrongStepException extends ResponseStatusException {

    private static final long serialVersionUID = 1L;

    WrongStepException(String sentence) {
        super(HttpStatus.CONFLICT, sentence);
    }
}
