package org.stillrail.calculation;

/** A request record with rules about more than one of its fields. */
interface CrossChecked {

    /**
     * Called for every record that could be read, also where single fields are wrong; those are null then and no business
     * of this check.
     *
     * @param path JSON path of this record
     */
    void check(String path, FieldProblems problems);
}
