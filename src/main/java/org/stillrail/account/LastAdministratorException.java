package org.stillrail.account;

/** Someone must be left who looks after people and roles. */
class LastAdministratorException extends RuntimeException {

    LastAdministratorException() {
        super("This is the last active administrator: make another one first");
    }
}
