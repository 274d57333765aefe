package org.stillrail.sweepfile;

import java.util.Locale;

/** Numbers and lists in sentences for people. */
final class Phrase {

    private static final int NAMED = 3;

    private Phrase() {
    }

    /** As short as it can be without losing digits that matter: {@code 50}, {@code 2.5e+09}. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6g", value);
        if (text.contains("e")) {
            int e = text.indexOf('e');
            return withoutZeros(text.substring(0, e)) + text.substring(e);
        }
        return withoutZeros(text);
    }

    /** With the prefix that leaves one to three digits before the point: {@code 1.5 kHz}. */
    static String frequency(double hz) {
        double[] scales = {1e9, 1e6, 1e3, 1, 1e-3};
        String[] units = {"GHz", "MHz", "kHz", "Hz", "mHz"};
        int i = 0;
        while (i < scales.length - 1 && hz < scales[i]) {
            i++;
        }
        return number(hz / scales[i]) + " " + units[i];
    }

    private static String withoutZeros(String text) {
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /** {@code 1 point}, {@code 3 points}. */
    static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** The first few frequencies and how many more there are. */
    static String frequencies(double[] hz, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(NAMED, length); i++) {
            text.append(i == 0 ? "" : ", ").append(frequency(hz[i]));
        }
        return length > NAMED ? text + " and " + (length - NAMED) + " more" : text.toString();
    }

    /** A cell or token cut short enough for a message, with control characters taken out. */
    static String quoted(String text) {
        String clean = text.replaceAll("\\p{Cntrl}", " ").strip();
        return "'" + (clean.length() > 40 ? clean.substring(0, 40) + "..." : clean) + "'";
    }
}
