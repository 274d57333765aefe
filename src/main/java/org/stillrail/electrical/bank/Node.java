package org.stillrail.electrical.bank;

/** One of the two nodes of a rail whose bank has a {@link Distance}. */
public enum Node {

    CONVERTER("at the converter"),
    LOAD("at the load");

    private final String label;

    Node(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
