package org.stillrail.calculation;

/** Request texts for tests, written with single quotes so that they stay legible. */
final class Json {

    private Json() {
    }

    static String of(String singleQuoted) {
        return singleQuoted.replace('\'', '"');
    }

    /** A bank of one branch of one inline part. */
    static String bank(String model) {
        return of("{'branches': [{'label': 'a', 'count': 1, 'model': " + model + "}]}");
    }

    static String rlc(double capacitanceF, double resistanceOhm, double inductanceH) {
        return of("{'kind': 'series-rlc', 'capacitanceF': " + capacitanceF + ", 'resistanceOhm': " + resistanceOhm
                + ", 'inductanceH': " + inductanceH + "}");
    }

    static String impedance(String bank, String grid) {
        return of("{'bank': " + bank + ", 'grid': " + grid + "}");
    }

    static String grid(double startHz, double stopHz, int points) {
        return of("{'startHz': " + startHz + ", 'stopHz': " + stopHz + ", 'points': " + points + "}");
    }
}
