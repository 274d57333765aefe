package org.stillrail.demo;

import java.util.List;

/** Branches of equal parts on the pads that the board really has. */
record AssembledBoard(List<Mounted> branches) implements Specimen {

    /** @param resistanceOhm of the pads, traces and vias of each part, likewise {@code inductanceH} */
    record Mounted(int count, CapacitorPhysics part, double resistanceOhm, double inductanceH) {

        Phasor impedance(double hz) {
            return part.impedance(hz).plus(new Phasor(resistanceOhm, 2 * Math.PI * hz * inductanceH)).times(1.0 / count);
        }
    }

    @Override
    public Phasor impedance(double hz) {
        Phasor admittance = new Phasor(0, 0);
        for (Mounted branch : branches) {
            admittance = admittance.plus(Phasor.ONE.over(branch.impedance(hz)));
        }
        return Phasor.ONE.over(admittance);
    }
}
