package org.stillrail.sweepfile;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The keywords of a version 2 file that say how its data are to be read. Touchstone File Format Specification 2.1. */
final class Version2Header {

    private static final int N11 = NetworkData.N11;
    private static final int N21 = NetworkData.N21;
    private static final int N12 = NetworkData.N12;
    private static final int N22 = NetworkData.N22;

    private final Set<String> seen = new HashSet<>();
    private String version;
    private OptionLine option;
    private KeywordLine ports;
    private KeywordLine frequencies;
    private KeywordLine order;
    private boolean triangular;
    private KeywordLine referenceKeyword;
    private double[] references;

    /** Later option lines are legal and without effect. */
    void option(SourceLine line) {
        if (option == null) {
            option = OptionLine.parse(line);
        }
    }

    void keyword(KeywordLine keyword) {
        once(keyword);
        switch (keyword.name()) {
            case "version" -> version(keyword);
            case "number of ports" -> {
                ports = keyword;
                if (keyword.wholeNumber(1) > 2) {
                    throw refused(keyword, "the file has " + keyword.arguments() + " ports; files of one or two ports are read");
                }
            }
            case "number of frequencies" -> {
                frequencies = keyword;
                keyword.wholeNumber(1);
            }
            case "number of noise frequencies" -> keyword.wholeNumber(1);
            case "two-port data order" -> {
                order = keyword;
                if (!keyword.arguments().equals("12_21") && !keyword.arguments().equals("21_12")) {
                    throw refused(keyword, "[Two-Port Data Order] must be 12_21 or 21_12, not " + Phrase.quoted(keyword.arguments()));
                }
            }
            case "matrix format" -> matrixFormat(keyword);
            case "mixed-mode order", "mixed mode order" -> throw refused(keyword,
                    "the file holds mixed-mode data, which are not read; save it as single-ended S, Z or Y parameters");
            default -> throw refused(keyword, "unknown keyword " + Phrase.quoted(keyword.shown()));
        }
    }

    private void version(KeywordLine keyword) {
        if (!keyword.arguments().equals("2.0") && !keyword.arguments().equals("2.1")) {
            throw refused(keyword, "version " + Phrase.quoted(keyword.arguments())
                    + " is not known; versions 1.0, 1.1 (without this keyword), 2.0 and 2.1 are read");
        }
        version = keyword.arguments();
    }

    private void matrixFormat(KeywordLine keyword) {
        switch (keyword.arguments().toLowerCase(Locale.ROOT)) {
            case "full" -> triangular = false;
            case "lower", "upper" -> triangular = true;
            default -> throw refused(keyword, "[Matrix Format] must be Full, Lower or Upper, not "
                    + Phrase.quoted(keyword.arguments()));
        }
    }

    /** The references may stand behind the keyword and on the lines after it. */
    void reference(KeywordLine keyword, List<NumberLine> following) {
        once(keyword);
        referenceKeyword = keyword;
        int size = 0;
        NumberLine behind = keyword.line().numbers(keyword.arguments());
        for (NumberLine line : following) {
            size += line.size();
        }
        references = new double[behind.size() + size];
        System.arraycopy(behind.values(), 0, references, 0, behind.size());
        int filled = behind.size();
        for (NumberLine line : following) {
            System.arraycopy(line.values(), 0, references, filled, line.size());
            filled += line.size();
        }
        for (double reference : references) {
            if (!(reference > 0)) {
                throw refused(keyword, "a reference must be a resistance above 0 ohm, not " + Phrase.number(reference));
            }
        }
    }

    /** What must be known when the data begin. */
    void beforeData(KeywordLine networkData) {
        once(networkData);
        if (!networkData.arguments().isEmpty()) {
            throw refused(networkData, "data must begin on the line after [Network Data]");
        }
        if (ports == null) {
            throw refused(networkData, "[Number of Ports] is missing before the data");
        }
        if (frequencies == null) {
            throw refused(networkData, "[Number of Frequencies] is missing before the data");
        }
        if (order != null && ports() != 2) {
            throw refused(order, "[Two-Port Data Order] belongs to files of two ports only");
        }
        if (references != null && references.length != ports()) {
            throw refused(referenceKeyword, "[Reference] gives " + Phrase.count(references.length, "value")
                    + ", the file has " + Phrase.count(ports(), "port"));
        }
    }

    void requireData(List<NumberLine> network) {
        if (!seen.contains("network data")) {
            throw SweepFileException.ofFile("[Network Data] is missing");
        }
        if (network.isEmpty()) {
            throw SweepFileException.ofFile("There are no numbers after [Network Data]");
        }
    }

    OptionLine option(List<String> warnings) {
        if (option == null) {
            warnings.add("There is no option line; GHz, S parameters as magnitude and angle, and 50 ohm were assumed.");
            return OptionLine.DEFAULT;
        }
        return option;
    }

    String version() {
        return version;
    }

    int ports() {
        return ports.wholeNumber(1);
    }

    int frequencies() {
        return frequencies.wholeNumber(1);
    }

    int frequenciesLine() {
        return frequencies.number();
    }

    boolean isTriangular() {
        return triangular;
    }

    boolean orderKnown() {
        return ports() == 1 || order != null || triangular;
    }

    /** 2 n^2 + 1 numbers a point, or n^2 + n + 1 where only a triangle of a symmetric matrix is stored. */
    int numbersPerPoint() {
        int n = ports();
        return triangular ? n * n + n + 1 : PortCount.numbersPerPoint(n);
    }

    /** Which entries of the matrix each pair of numbers fills. */
    int[][] entries() {
        if (ports() == 1) {
            return new int[][] {{N11}};
        }
        if (triangular) {
            return new int[][] {{N11}, {N21, N12}, {N22}};
        }
        boolean rowFirst = order != null && order.arguments().equals("12_21");
        return rowFirst ? new int[][] {{N11}, {N12}, {N21}, {N22}} : new int[][] {{N11}, {N21}, {N12}, {N22}};
    }

    /** [Reference] goes before the option line's R. */
    double[] references(OptionLine used) {
        if (references != null) {
            return references.clone();
        }
        double[] all = new double[ports()];
        List<Double> given = used.referenceOhm();
        if (given.size() != 1 && given.size() != all.length) {
            throw refused(ports, "the option line gives " + given.size() + " references, the file has "
                    + Phrase.count(all.length, "port"));
        }
        for (int port = 0; port < all.length; port++) {
            all[port] = given.get(given.size() == 1 ? 0 : port);
        }
        return all;
    }

    private void once(KeywordLine keyword) {
        if (!seen.add(keyword.name())) {
            throw refused(keyword, keyword.shown() + " stands twice");
        }
    }

    private static SweepFileException refused(KeywordLine keyword, String reason) {
        return new SweepFileException(keyword.number(), reason);
    }
}
