package org.stillrail.web;

import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** Somebody else changed the same thing since this page was opened; nothing was overwritten. */
public class StaleVersionException extends ResponseStatusException {

    private static final long serialVersionUID = 1L;

    public StaleVersionException(String what) {
        super(HttpStatus.CONFLICT, what);
    }
}
