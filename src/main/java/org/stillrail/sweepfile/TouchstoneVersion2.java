package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * Touchstone 2.0 and 2.1: keywords, then network data that are not normalised. Required keywords must be there; their order is
 * not held against a file, except that [Version] comes first and the data last.
 */
final class TouchstoneVersion2 {

    private final List<SourceLine> lines;
    private final List<String> warnings = new ArrayList<>();
    private final Version2Header header = new Version2Header();
    private final List<NumberLine> network = new ArrayList<>();
    private int noiseLines;
    private boolean ended;

    private TouchstoneVersion2(List<SourceLine> lines) {
        this.lines = lines;
    }

    static Touchstone read(List<SourceLine> lines) {
        return new TouchstoneVersion2(lines).read();
    }

    private Touchstone read() {
        int i = 0;
        while (i < lines.size()) {
            SourceLine line = lines.get(i);
            if (ended) {
                throw new SweepFileException(line.number(), "text after [End]");
            }
            if (line.isKeyword()) {
                i = keyword(KeywordLine.of(line), i + 1);
            } else if (line.isOption()) {
                header.option(line);
                i++;
            } else {
                throw new SweepFileException(line.number(), Phrase.quoted(line.text()) + " stands where a keyword should");
            }
        }
        if (!ended) {
            warnings.add("The file does not close with [End].");
        }
        return result();
    }

    /** Takes a keyword and the lines that belong to it; returns the index of the next line. */
    private int keyword(KeywordLine keyword, int next) {
        switch (keyword.name()) {
            case "begin information" -> {
                return afterInformation(keyword, next);
            }
            case "reference" -> {
                int end = endOfNumbers(next);
                header.reference(keyword, numbers(next, end));
                return end;
            }
            case "network data" -> {
                header.beforeData(keyword);
                int end = endOfNumbers(next);
                network.addAll(numbers(next, end));
                return end;
            }
            case "noise data" -> {
                int end = endOfNumbers(next);
                noiseLines += numbers(next, end).size();
                return end;
            }
            case "end" -> ended = true;
            default -> header.keyword(keyword);
        }
        return next;
    }

    private int afterInformation(KeywordLine begin, int next) {
        for (int i = next; i < lines.size(); i++) {
            if (KeywordLine.isKeyword(lines.get(i), "end information")) {
                return i + 1;
            }
        }
        throw new SweepFileException(begin.number(), "[Begin Information] is not closed by [End Information]");
    }

    private int endOfNumbers(int from) {
        int i = from;
        while (i < lines.size() && !lines.get(i).isKeyword()) {
            i++;
        }
        return i;
    }

    private List<NumberLine> numbers(int from, int to) {
        List<NumberLine> numbers = new ArrayList<>(to - from);
        for (SourceLine line : lines.subList(from, to)) {
            if (line.isOption()) {
                header.option(line);
            } else {
                numbers.add(line.numbers());
            }
        }
        return numbers;
    }

    private Touchstone result() {
        header.requireData(network);
        OptionLine option = header.option(warnings);
        int ports = header.ports();
        int perPoint = header.numbersPerPoint();
        List<NumberLine> points = PointGrouping.byCount(network, perPoint, header.frequencies(), header.frequenciesLine(),
                (ports == 1 ? "one port" : "two ports") + (header.isTriangular() && ports == 2 ? " (triangular)" : ""));
        if (noiseLines > 0) {
            warnings.add("Noise data (" + Phrase.count(noiseLines, "line") + ") were passed over.");
        }
        if (!header.orderKnown()) {
            warnings.add("[Two-Port Data Order] is missing; N21 was taken to stand before N12, as in version 1.");
        }
        double[] references = header.references(option);
        List<Double> shown = new ArrayList<>();
        for (double reference : references) {
            if (!shown.contains(reference)) {
                shown.add(reference);
            }
        }
        NetworkData data = Touchstone.data(points, option, ports, header.entries(), references, header.orderKnown());
        boolean usesReference = data.parameter() == NetworkData.Parameter.S;
        return new Touchstone(data, usesReference, Touchstone.label(header.version(), ports, option, shown), warnings);
    }
}
