package org.stillrail.sweepfile;

import java.util.List;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;

/**
 * Writes an impedance over frequency as text that other programs read. Numbers keep all their digits, so that reading a file
 * back gives the same sweep within rounding.
 */
public final class SweepWriter {

    private static final int LONGEST_COMMENT = 120;

    private SweepWriter() {
    }

    /** Touchstone 1.1, one port, Z parameters: normalised to 1 ohm, so that the numbers are ohms. */
    public static String touchstoneZ(Curve impedance, List<String> comments) {
        StringBuilder text = new StringBuilder();
        comments(text, "! ", comments);
        text.append("! Z parameters in ohm (normalised to 1 ohm)\n# Hz Z RI R 1\n");
        for (int i = 0; i < impedance.size(); i++) {
            line(text, ' ', impedance.grid().hz(i), impedance.real(i), impedance.imaginary(i));
        }
        return text.toString();
    }

    /**
     * Touchstone 1.1, one port, S parameters: the reflection of the impedance.
     *
     * @param referenceOhm above 0
     */
    public static String touchstoneS(Curve impedance, double referenceOhm, List<String> comments) {
        if (!(referenceOhm > 0) || Double.isInfinite(referenceOhm)) {
            throw new IllegalArgumentException("referenceOhm must be above 0, not " + referenceOhm);
        }
        StringBuilder text = new StringBuilder();
        comments(text, "! ", comments);
        text.append("# Hz S RI R ").append(plain(referenceOhm)).append('\n');
        for (int i = 0; i < impedance.size(); i++) {
            Complex z = new Complex(impedance.real(i), impedance.imaginary(i));
            Complex s = ScatteringImpedance.scattering(Fixture.REFLECTION, z, referenceOhm);
            line(text, ' ', impedance.grid().hz(i), s.re(), s.im());
        }
        return text.toString();
    }

    /** Comma-separated text with one heading line; comments begin with a hash mark. */
    public static String csv(Curve impedance, List<String> comments) {
        StringBuilder text = new StringBuilder();
        comments(text, "# ", comments);
        text.append("freq/Hz,Re(Z)/Ohm,Im(Z)/Ohm\n");
        for (int i = 0; i < impedance.size(); i++) {
            line(text, ',', impedance.grid().hz(i), impedance.real(i), impedance.imaginary(i));
        }
        return text.toString();
    }

    private static void comments(StringBuilder text, String mark, List<String> comments) {
        for (String comment : comments) {
            String clean = comment.replaceAll("[\\p{Cntrl}\u2028\u2029]+", " ").strip();
            text.append(mark).append(clean, 0, Math.min(LONGEST_COMMENT, clean.length())).append('\n');
        }
    }

    private static void line(StringBuilder text, char delimiter, double hz, double first, double second) {
        text.append(plain(hz)).append(delimiter).append(plain(first)).append(delimiter).append(plain(second)).append('\n');
    }

    /** Whole numbers without a point: {@code 1000} rather than {@code 1000.0}. */
    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value) : Double.toString(value);
    }
}
