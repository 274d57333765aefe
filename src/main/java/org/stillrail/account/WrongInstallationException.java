package org.stillrail.account;

/** The database holds data of the other kind than this start is for. */
class WrongInstallationException extends RuntimeException {

    private final String action;

    WrongInstallationException(String message, String action) {
        super(message);
        this.action = action;
    }

    String action() {
        return action;
    }
}
