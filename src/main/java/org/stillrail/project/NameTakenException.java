package org.stillrail.project;

/** A project or a rail of this name exists already. */
public class NameTakenException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public NameTakenException(String what, String name) {
        super(what + " '" + name + "' exists already; choose another name");
    }
}
