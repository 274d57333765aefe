package org.stillrail.sweepfile;

/** How a pair of numbers makes a complex value. Angles are in degrees. */
enum ComplexFormat {

    RI("real and imaginary"),
    MA("magnitude and angle"),
    DB("decibel and angle");

    private final String words;

    ComplexFormat(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    double re(double first, double second) {
        return this == RI ? first : magnitude(first) * Math.cos(Math.toRadians(second));
    }

    double im(double first, double second) {
        return this == RI ? second : magnitude(first) * Math.sin(Math.toRadians(second));
    }

    private double magnitude(double first) {
        return this == DB ? Math.pow(10, first / 20) : first;
    }
}
