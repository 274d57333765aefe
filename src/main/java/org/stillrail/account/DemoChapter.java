package org.stillrail.account;

/**
 * What one room adds to the demo. A bean of this type is called once, when the demo fills an empty database, in one
 * transaction with all the others, in the order of {@code @Order} (library 100, project 200, bank 300, review 400). Whatever
 * it throws stops the start and leaves the database empty.
 */
public interface DemoChapter {

    /** Writes the room's part of the scenario. */
    void write(DemoTeam team);
}
