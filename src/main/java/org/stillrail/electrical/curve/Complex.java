package org.stillrail.electrical.curve;

/** One complex number, for single frequencies; whole curves are two arrays. */
public record Complex(double re, double im) {

    public static final Complex ZERO = new Complex(0, 0);
    public static final Complex ONE = new Complex(1, 0);

    public static Complex polar(double magnitude, double angleRad) {
        return new Complex(magnitude * Math.cos(angleRad), magnitude * Math.sin(angleRad));
    }

    public Complex plus(Complex other) {
        return new Complex(re + other.re, im + other.im);
    }

    public Complex minus(Complex other) {
        return new Complex(re - other.re, im - other.im);
    }

    public Complex times(Complex other) {
        return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    public Complex times(double factor) {
        return new Complex(re * factor, im * factor);
    }

    public Complex over(Complex other) {
        return times(other.reciprocal());
    }

    /** Infinite or NaN parts for zero, as IEEE division gives them. */
    public Complex reciprocal() {
        double squared = re * re + im * im;
        return new Complex(re / squared, -im / squared);
    }

    public double magnitude() {
        return Math.hypot(re, im);
    }

    public double angleRad() {
        return Math.atan2(im, re);
    }
}
