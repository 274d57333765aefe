package org.stillrail.demo;

/** What hangs on the instrument: a sample, a fixture with a standard in it, an assembled board. */
interface Specimen {

    Phasor impedance(double hz);
}
