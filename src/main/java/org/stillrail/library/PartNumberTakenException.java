package org.stillrail.library;

/** The library holds this part number already. */
public class PartNumberTakenException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    PartNumberTakenException(String partNumber) {
        super("The library already holds " + partNumber + "; open it and make a new revision instead");
    }
}
