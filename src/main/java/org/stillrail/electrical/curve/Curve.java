package org.stillrail.electrical.curve;

/**
 * A complex quantity over frequency, usually an impedance in ohm: {@code real[i] + j imaginary[i]} belongs to
 * {@code grid.hz(i)}. Immutable: arrays are copied on the way in and on the way out.
 */
public final class Curve {

    private final FrequencyGrid grid;
    private final double[] real;
    private final double[] imaginary;

    /** @throws IllegalArgumentException when the three lengths differ */
    public Curve(FrequencyGrid grid, double[] real, double[] imaginary) {
        this(real.clone(), imaginary.clone(), grid);
    }

    private Curve(double[] real, double[] imaginary, FrequencyGrid grid) {
        if (real.length != grid.size() || imaginary.length != grid.size()) {
            throw new IllegalArgumentException("A curve on " + grid.size() + " frequencies needs as many values, not "
                    + real.length + " real and " + imaginary.length + " imaginary");
        }
        this.grid = grid;
        this.real = real;
        this.imaginary = imaginary;
    }

    /**
     * A curve that keeps the arrays themselves, for the hot loops: whoever made them must not touch them afterwards.
     *
     * @throws IllegalArgumentException when the three lengths differ
     */
    public static Curve takingOver(FrequencyGrid grid, double[] real, double[] imaginary) {
        return new Curve(real, imaginary, grid);
    }

    public FrequencyGrid grid() {
        return grid;
    }

    public int size() {
        return real.length;
    }

    public double real(int index) {
        return real[index];
    }

    public double imaginary(int index) {
        return imaginary[index];
    }

    public double magnitude(int index) {
        return Math.hypot(real[index], imaginary[index]);
    }

    /** Principal value, -180 to 180 degrees. */
    public double phaseDeg(int index) {
        return Math.toDegrees(Math.atan2(imaginary[index], real[index]));
    }

    public double[] reals() {
        return real.clone();
    }

    public double[] imaginaries() {
        return imaginary.clone();
    }

    public double[] magnitudes() {
        double[] magnitudes = new double[real.length];
        for (int i = 0; i < magnitudes.length; i++) {
            magnitudes[i] = magnitude(i);
        }
        return magnitudes;
    }

    public double[] phasesDeg() {
        double[] phases = new double[real.length];
        for (int i = 0; i < phases.length; i++) {
            phases[i] = phaseDeg(i);
        }
        return phases;
    }
}
