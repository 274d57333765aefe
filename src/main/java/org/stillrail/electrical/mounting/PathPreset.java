package org.stillrail.electrical.mounting;

import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;

/**
 * Usual figures of what lies between a converter and its load, to start from; common practice, no source. R and L are constants: the
 * resistance of a bead that rises with frequency, and an inductance that falls with current, are not modelled.
 */
public enum PathPreset {

    PLANE("a plane", new SeriesPath(0.5e-3, 0.2e-9), Node.LOAD),
    BEAD("a ferrite bead", new SeriesPath(20e-3, 100e-9), Node.CONVERTER),
    INDUCTOR("a second-stage inductor", new SeriesPath(5e-3, 220e-9), Node.CONVERTER);

    private final String label;
    private final SeriesPath path;
    private final Node sense;

    PathPreset(String label, SeriesPath path, Node sense) {
        this.label = label;
        this.path = path;
        this.sense = sense;
    }

    public String label() {
        return label;
    }

    public SeriesPath path() {
        return path;
    }

    /** Where a converter usually senses with such a path: in front of what would turn the phase of its loop. */
    public Node sense() {
        return sense;
    }
}
