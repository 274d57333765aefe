package org.stillrail.web;

import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** What was asked for does not exist; becomes a page that says so in words. */
public class NotFoundException extends ResponseStatusException {

    private static final long serialVersionUID = 1L;

    /** @param what a sentence, such as 'There is no part with this address' */
    public NotFoundException(String what) {
        super(HttpStatus.NOT_FOUND, what);
    }
}
