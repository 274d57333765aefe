package org.stillrail.electrical.curve;

/** A complex value with its slope over frequency, which sums, products and reciprocals carry along exactly. */
public record Sloped(double re, double im, double rePerHz, double imPerHz) implements SlopedPoint {

    public static final Sloped ZERO = new Sloped(0, 0, 0, 0);
    public static final Sloped ONE = new Sloped(1, 0, 0, 0);

    public static Sloped of(SlopedPoint point) {
        return new Sloped(point.re(), point.im(), point.rePerHz(), point.imPerHz());
    }

    public Sloped plus(Sloped other) {
        return new Sloped(re + other.re, im + other.im, rePerHz + other.rePerHz, imPerHz + other.imPerHz);
    }

    public Sloped times(Sloped other) {
        return new Sloped(
                re * other.re - im * other.im,
                re * other.im + im * other.re,
                rePerHz * other.re - imPerHz * other.im + re * other.rePerHz - im * other.imPerHz,
                rePerHz * other.im + imPerHz * other.re + re * other.imPerHz + im * other.rePerHz);
    }

    /** {@code d(1/z) = -(1/z)^2 dz}. */
    public Sloped reciprocal() {
        double squared = squaredMagnitude();
        double yRe = re / squared;
        double yIm = -im / squared;
        double y2Re = yRe * yRe - yIm * yIm;
        double y2Im = 2 * yRe * yIm;
        return new Sloped(yRe, yIm, -(y2Re * rePerHz - y2Im * imPerHz), -(y2Re * imPerHz + y2Im * rePerHz));
    }
}
