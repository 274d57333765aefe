package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * Touchstone 1.0 and 1.1: an option line, then numbers. Z and Y data are normalised to the reference and are brought back to
 * ohm and siemens here. Two ports stand in the order N11 N21 N12 N22.
 */
final class TouchstoneVersion1 {

    private static final int[][] ONE_PORT = {{NetworkData.N11}};
    private static final int[][] TWO_PORTS = {{NetworkData.N11}, {NetworkData.N21}, {NetworkData.N12}, {NetworkData.N22}};

    private TouchstoneVersion1() {
    }

    static Touchstone read(List<SourceLine> lines, String fileName) {
        List<String> warnings = new ArrayList<>();
        OptionLine option = optionLine(lines, warnings);
        List<NumberLine> numbers = numberLines(lines);
        if (numbers.isEmpty()) {
            throw SweepFileException.ofFile("The file holds no data");
        }
        int ports = PortCount.of(numbers, fileName);
        int named = PortCount.fromName(fileName);
        if (named > 0 && named != ports) {
            warnings.add("The file's name says " + Phrase.count(named, "port") + ", its data have " + ports
                    + "; they were read as " + ports + ".");
        }
        double[] references = references(option, ports, lines);
        List<NumberLine> points = points(numbers, ports, warnings);
        NetworkData normalised = Touchstone.data(points, option, ports, ports == 1 ? ONE_PORT : TWO_PORTS, references, true);
        String version = option.referenceOhm().size() > 1 ? "1.1" : "1.0";
        return new Touchstone(denormalised(normalised), true,
                Touchstone.label(version, ports, option, option.referenceOhm()), warnings);
    }

    private static OptionLine optionLine(List<SourceLine> lines, List<String> warnings) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isOption()) {
                if (i > 0) {
                    throw new SweepFileException(lines.get(0).number(), "data stand before the option line (line "
                            + lines.get(i).number() + ")");
                }
                return OptionLine.parse(lines.get(i));
            }
        }
        warnings.add("There is no option line; GHz, S parameters as magnitude and angle, and 50 ohm were assumed.");
        return OptionLine.DEFAULT;
    }

    private static List<NumberLine> numberLines(List<SourceLine> lines) {
        List<NumberLine> numbers = new ArrayList<>();
        for (SourceLine line : lines) {
            if (line.isKeyword()) {
                throw new SweepFileException(line.number(), "the keyword " + Phrase.quoted(line.text())
                        + " belongs to version 2, whose files begin with [Version]");
            }
            if (!line.isOption()) {
                numbers.add(line.numbers());
            }
        }
        return numbers;
    }

    private static double[] references(OptionLine option, int ports, List<SourceLine> lines) {
        List<Double> given = option.referenceOhm();
        if (given.size() > 1 && given.size() != ports) {
            throw new SweepFileException(lines.get(0).number(), "the option line gives " + given.size()
                    + " references, the data have " + Phrase.count(ports, "port"));
        }
        double[] references = new double[ports];
        for (int port = 0; port < ports; port++) {
            references[port] = given.get(given.size() == 1 ? 0 : port);
        }
        return references;
    }

    private static List<NumberLine> points(List<NumberLine> numbers, int ports, List<String> warnings) {
        int perPoint = PortCount.numbersPerPoint(ports);
        int end = ports == 2 ? NoiseBlock.start(numbers, perPoint) : numbers.size();
        if (end < numbers.size()) {
            warnings.add("Noise data from line " + numbers.get(end).number() + " on were passed over.");
        }
        return PointGrouping.byLine(numbers.subList(0, end), perPoint, ports == 1 ? "one port" : "two ports");
    }

    /** Z = z sqrt(Ri Rj), Y = y / sqrt(Ri Rj): with one reference, R and 1 / R. S is left alone. */
    private static NetworkData denormalised(NetworkData data) {
        if (data.parameter() == NetworkData.Parameter.S) {
            return data;
        }
        for (int entry = 0; entry < data.re().length; entry++) {
            double scale = scale(data, entry);
            for (int k = 0; k < data.size(); k++) {
                data.re()[entry][k] *= scale;
                data.im()[entry][k] *= scale;
            }
        }
        return data;
    }

    private static double scale(NetworkData data, int entry) {
        int row = entry == NetworkData.N21 || entry == NetworkData.N22 ? 1 : 0;
        int column = entry == NetworkData.N12 || entry == NetworkData.N22 ? 1 : 0;
        double a = data.referenceOhm()[row];
        double b = data.referenceOhm()[column];
        double ohm = a == b ? a : Math.sqrt(a * b);
        return data.parameter() == NetworkData.Parameter.Z ? ohm : 1 / ohm;
    }
}
