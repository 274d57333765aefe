package org.stillrail.demo;

/**
 * How a sample is connected and what noise that leaves on the impedance. Each fixture turns the true impedance into the
 * quantities its instrument reports, and says how well an impedance can be known from them: a reflection of nearly -1 hides
 * the milliohms that shunt-through still sees, and shunt-through blurs what series-through sees well.
 */
enum Bench {

    /** S11 of a part that ends the line. */
    REFLECTION("reflection", 4e-4) {
        @Override
        Phasor wave(Phasor z) {
            return z.minus(REFERENCE).over(z.plus(REFERENCE));
        }

        @Override
        Phasor impedance(Phasor wave) {
            return REFERENCE.times(Phasor.ONE.plus(wave)).over(Phasor.ONE.minus(wave));
        }
    },

    /** S21 of a part from the line to ground. */
    SHUNT_THROUGH("shunt-through", 3e-6) {
        @Override
        Phasor wave(Phasor z) {
            return z.times(2).over(z.times(2).plus(REFERENCE));
        }

        @Override
        Phasor impedance(Phasor wave) {
            return REFERENCE.times(0.5).times(wave).over(Phasor.ONE.minus(wave));
        }
    },

    /** S21 of a part in the line. */
    SERIES_THROUGH("series-through", 3e-6) {
        @Override
        Phasor wave(Phasor z) {
            return REFERENCE.times(2).over(REFERENCE.times(2).plus(z));
        }

        @Override
        Phasor impedance(Phasor wave) {
            return REFERENCE.times(2).times(Phasor.ONE.minus(wave)).over(wave);
        }
    },

    /** An instrument that reports impedance itself. */
    IMPEDANCE("impedance", 4e-5) {
        @Override
        Phasor wave(Phasor z) {
            return z;
        }

        @Override
        Phasor impedance(Phasor wave) {
            return wave;
        }
    };

    static final Phasor REFERENCE = new Phasor(50, 0);

    /** Standard deviation of gain and phase, as a part of the reading. */
    private static final double RELATIVE = 1.2e-4;

    private final String word;
    private final double floor;

    Bench(String word, double floor) {
        this.word = word;
        this.floor = floor;
    }

    /** What the instrument would report without noise. */
    abstract Phasor wave(Phasor z);

    abstract Phasor impedance(Phasor wave);

    /** The fixture's word in provenance and in the readers. */
    String word() {
        return word;
    }

    /** A noisy reading. */
    Phasor read(Phasor z, InstrumentNoise noise) {
        Phasor clean = wave(z);
        return clean.plus(noise.next(deviation(clean)));
    }

    /** Standard deviation of each part of the impedance found from one reading, to first order. */
    double deviationOhm(Phasor z) {
        Phasor clean = wave(z);
        double small = deviation(clean);
        double along = impedance(clean.plus(new Phasor(small, 0))).minus(z).magnitude();
        double across = impedance(clean.plus(new Phasor(0, small))).minus(z).magnitude();
        return Math.max(along, across);
    }

    private double deviation(Phasor clean) {
        double proportional = this == REFLECTION ? 0 : RELATIVE * clean.magnitude();
        return Math.sqrt(floor * floor + proportional * proportional);
    }
}
