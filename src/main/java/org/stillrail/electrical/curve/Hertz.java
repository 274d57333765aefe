package org.stillrail.electrical.curve;

import java.math.BigDecimal;
import java.math.MathContext;

/** A frequency within a sentence. */
public final class Hertz {

    private static final int DIGITS = 3;

    private Hertz() {
    }

    /** To three digits, as '10 MHz'. */
    public static String words(double hz) {
        double scaled = hz >= 1e9 ? hz / 1e9 : hz >= 1e6 ? hz / 1e6 : hz >= 1e3 ? hz / 1e3 : hz;
        String number = new BigDecimal(scaled).round(new MathContext(DIGITS)).stripTrailingZeros().toPlainString();
        return number + (hz >= 1e9 ? " GHz" : hz >= 1e6 ? " MHz" : hz >= 1e3 ? " kHz" : " Hz");
    }
}
