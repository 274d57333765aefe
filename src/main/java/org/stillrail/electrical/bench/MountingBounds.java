package org.stillrail.electrical.bench;

/** The largest mounting of one part that is believable; the smallest is nothing. */
public record MountingBounds(double mostResistanceOhm, double mostInductanceH) {

    /** 100 mohm and 30 nH: a long trace to a leaded part. Common practice, no source. */
    public static final MountingBounds BELIEVABLE = new MountingBounds(0.1, 30e-9);
}
