package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * What a Touchstone file holds.
 *
 * @param usesReference false for Z and Y data of version 2, on which the reference has no effect
 * @param format        version, ports, parameter, number format, unit and reference, in words
 * @param warnings      modifiable, for the steps that follow
 */
record Touchstone(NetworkData data, boolean usesReference, String format, List<String> warnings) {

    /** Recognises a Touchstone file by its first line of content, or by its name where it has no option line. */
    static boolean isRecognised(String text, String fileName) {
        boolean named = PortCount.fromName(fileName) > 0;
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            end = end < 0 ? text.length() : end;
            String line = SourceLine.withoutComment(text.substring(start, end));
            if (!line.isEmpty()) {
                boolean version = line.length() > 8 && line.substring(0, 9).equalsIgnoreCase("[version]");
                return version || OptionLine.looksLikeOne(line) && !isSeparatedByCommas(text, end) || named;
            }
            start = end + 1;
        }
        return named;
    }

    /** A bare hash mark may also head a text table. */
    private static boolean isSeparatedByCommas(String text, int from) {
        String next = text.substring(from, Math.min(text.length(), from + 400)).strip();
        int end = next.indexOf('\n');
        String line = end < 0 ? next : next.substring(0, end);
        return !line.startsWith("!") && (line.indexOf(',') >= 0 || line.indexOf(';') >= 0);
    }

    /** @throws SweepFileException with the line and the reason */
    static Touchstone read(String text, String fileName) {
        List<SourceLine> lines = SourceLine.of(text);
        if (lines.isEmpty()) {
            throw SweepFileException.ofFile("The file holds nothing but comments");
        }
        if (KeywordLine.isKeyword(lines.get(0), "version")) {
            return TouchstoneVersion2.read(lines);
        }
        return TouchstoneVersion1.read(lines, fileName);
    }

    /** The label of a file, one way for both versions. */
    static String label(String version, int ports, OptionLine option, List<Double> references) {
        List<String> ohm = new ArrayList<>();
        for (double reference : references) {
            ohm.add(Phrase.number(reference));
        }
        return "Touchstone " + version + ", " + (ports == 1 ? "one port" : "two ports") + ", " + option.parameter()
                + " parameters, " + option.format().words() + ", " + option.unit() + ", " + String.join(" and ", ohm) + " ohm";
    }

    /** Builds the data of one or two ports from points whose pairs stand in the order of {@code entries}. */
    static NetworkData data(List<NumberLine> points, OptionLine option, int ports, int[][] entries, double[] references,
                            boolean orderKnown) {
        int n = points.size();
        double[] hz = new double[n];
        double[][] re = new double[ports * ports][n];
        double[][] im = new double[ports * ports][n];
        for (int k = 0; k < n; k++) {
            double[] values = points.get(k).values();
            hz[k] = values[0] * option.hertzPerUnit();
            if (values[0] < 0 || Double.isInfinite(hz[k])) {
                throw new SweepFileException(points.get(k).number(), "the frequency " + Phrase.number(values[0])
                        + (values[0] < 0 ? " is negative" : " is too large"));
            }
            for (int pair = 0; pair < entries.length; pair++) {
                double first = values[1 + 2 * pair];
                double second = values[2 + 2 * pair];
                double real = option.format().re(first, second);
                double imaginary = option.format().im(first, second);
                if (!Double.isFinite(real) || !Double.isFinite(imaginary)) {
                    throw new SweepFileException(points.get(k).number(), "the value " + Phrase.number(first) + " is too large");
                }
                for (int entry : entries[pair]) {
                    re[entry][k] = real;
                    im[entry][k] = imaginary;
                }
            }
        }
        return new NetworkData(option.parameter(), hz, re, im, references, orderKnown);
    }
}
