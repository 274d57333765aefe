package org.stillrail.demo;

/**
 * What the invented parts do, richer than a series R, L and C yet causal and passive:
 *
 * <pre>
 * Z(s) = metal sqrt(1 + s/w_skin) + electrolyte + sqrt(pore Zc) coth(sqrt(pore / Zc)) + s L,   Zc = 1 / (Q s^a)
 * </pre>
 *
 * The first term is the skin effect of foil, leads and electrodes (resistance and inner inductance rise together); the
 * third a capacitor spread along resistive pores (a uniform RC line, as de Levie gave it for porous electrodes), whose
 * capacitance fades where the signal no longer reaches the bottom of the pores: etched foil, sintered tantalum and active
 * carbon behave so. {@code Zc} is a constant-phase element: a dielectric with a loss tangent that hardly changes over
 * frequency, {@code a = 1 - (2/pi) atan(lossTangent)}. All from memory, textbook forms.
 *
 * @param capacitanceF    series capacitance of Zc at {@code referenceHz}
 * @param lossTangent     of the dielectric alone
 * @param poreOhm         resistance along the whole depth of the pores, 0 for a dielectric without pores
 * @param electrolyteOhm  what lies between the pores and the terminals
 * @param metalOhm        at low frequency
 * @param skinHz          where the skin effect starts
 */
record CapacitorPhysics(double capacitanceF, double referenceHz, double lossTangent, double poreOhm, double electrolyteOhm,
        double metalOhm, double skinHz, double inductanceH) implements Specimen {

    @Override
    public Phasor impedance(double hz) {
        double omega = 2 * Math.PI * hz;
        Phasor metal = new Phasor(1, hz / skinHz).squareRoot().times(metalOhm);
        Phasor dielectric = dielectric(omega);
        return metal.plus(new Phasor(electrolyteOhm, omega * inductanceH)).plus(poreOhm == 0 ? dielectric : line(dielectric));
    }

    private Phasor dielectric(double omega) {
        double lossAngle = StrictMath.atan(lossTangent);
        double exponent = 1 - 2 * lossAngle / Math.PI;
        double referenceOmega = 2 * Math.PI * referenceHz;
        double reactance = StrictMath.pow(omega / referenceOmega, -exponent) / (referenceOmega * capacitanceF);
        return new Phasor(reactance * StrictMath.tan(lossAngle), -reactance);
    }

    private Phasor line(Phasor dielectric) {
        Phasor pore = new Phasor(poreOhm, 0);
        return pore.times(dielectric).squareRoot().times(pore.over(dielectric).squareRoot().coth());
    }

    /** For DC bias, age, temperature or the spread between samples. */
    CapacitorPhysics capacitanceTimes(double factor) {
        return new CapacitorPhysics(capacitanceF * factor, referenceHz, lossTangent, poreOhm, electrolyteOhm, metalOhm, skinHz,
                inductanceH);
    }

    /** A cold or dried-out electrolyte: pores and the way to them alike. */
    CapacitorPhysics electrolyteTimes(double factor) {
        return new CapacitorPhysics(capacitanceF, referenceHz, lossTangent, poreOhm * factor, electrolyteOhm * factor, metalOhm,
                skinHz, inductanceH);
    }

    /** Dielectric loss, which falls under DC bias in class 2 ceramics. */
    CapacitorPhysics lossTimes(double factor) {
        return new CapacitorPhysics(capacitanceF, referenceHz, lossTangent * factor, poreOhm, electrolyteOhm, metalOhm, skinHz,
                inductanceH);
    }

    /** The lead length or the place on the fixture differs a little from sample to sample. */
    CapacitorPhysics inductanceTimes(double factor) {
        return new CapacitorPhysics(capacitanceF, referenceHz, lossTangent, poreOhm, electrolyteOhm, metalOhm, skinHz,
                inductanceH * factor);
    }
}
