package org.stillrail.demo;

/** A complex number whose functions give the same bits on every JDK. */
record Phasor(double re, double im) {

    static final Phasor ONE = new Phasor(1, 0);

    static Phasor polar(double magnitude, double angleRad) {
        return new Phasor(magnitude * StrictMath.cos(angleRad), magnitude * StrictMath.sin(angleRad));
    }

    Phasor plus(Phasor other) {
        return new Phasor(re + other.re, im + other.im);
    }

    Phasor minus(Phasor other) {
        return new Phasor(re - other.re, im - other.im);
    }

    Phasor times(Phasor other) {
        return new Phasor(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    Phasor times(double factor) {
        return new Phasor(re * factor, im * factor);
    }

    Phasor over(Phasor other) {
        double square = other.re * other.re + other.im * other.im;
        return new Phasor((re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
    }

    /** The root with a real part of 0 or more. */
    Phasor squareRoot() {
        return polar(Math.sqrt(magnitude()), angleRad() / 2);
    }

    /** (1 + exp(-2z)) / (1 - exp(-2z)), for a positive real part. */
    Phasor coth() {
        Phasor decay = polar(StrictMath.exp(-2 * re), -2 * im);
        return ONE.plus(decay).over(ONE.minus(decay));
    }

    double magnitude() {
        return Math.sqrt(re * re + im * im);
    }

    double angleRad() {
        return StrictMath.atan2(im, re);
    }
}
