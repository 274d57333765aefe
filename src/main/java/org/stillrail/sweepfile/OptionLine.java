package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The line of a Touchstone file that begins with a hash mark: unit, parameter, number format and references, in any order and
 * case, each with a default. Touchstone File Format Specification, version 2.1, "Option Line".
 *
 * @param hertzPerUnit 1, 1e3, 1e6 or 1e9
 * @param referenceOhm one value, or one per port (version 1.1)
 */
record OptionLine(double hertzPerUnit, String unit, NetworkData.Parameter parameter, ComplexFormat format,
                  List<Double> referenceOhm) {

    static final OptionLine DEFAULT = new OptionLine(1e9, "GHz", NetworkData.Parameter.S, ComplexFormat.MA, List.of(50.0));

    static OptionLine parse(SourceLine line) {
        return new Parser(line).parse();
    }

    /** Whether the text can only be an option line; other text files also begin comments with a hash mark. */
    static boolean looksLikeOne(String text) {
        if (!text.startsWith("#")) {
            return false;
        }
        for (String token : tokens(text)) {
            String upper = token.toUpperCase(Locale.ROOT);
            boolean word = hertz(upper) > 0 || upper.matches("[SYZHG]|RI|MA|DB|R[0-9.]*");
            if (!word && !NumberText.isNumber(token, false)) {
                return false;
            }
        }
        return true;
    }

    private static String[] tokens(String text) {
        String rest = text.substring(1).strip();
        return rest.isEmpty() ? new String[0] : rest.split("\\s+");
    }

    private static double hertz(String upperUnit) {
        return switch (upperUnit) {
            case "HZ" -> 1;
            case "KHZ" -> 1e3;
            case "MHZ" -> 1e6;
            case "GHZ" -> 1e9;
            default -> 0;
        };
    }

    private static final class Parser {

        private final SourceLine line;
        private Double hertzPerUnit;
        private String unit;
        private NetworkData.Parameter parameter;
        private ComplexFormat format;
        private List<Double> references;

        Parser(SourceLine line) {
            this.line = line;
        }

        OptionLine parse() {
            String[] tokens = tokens(line.text());
            for (int i = 0; i < tokens.length; i++) {
                String upper = tokens[i].toUpperCase(Locale.ROOT);
                if (upper.equals("R")) {
                    i = references(tokens, i + 1);
                } else if (upper.matches("R[0-9.].*")) {
                    once("reference", references);
                    references = List.of(reference(tokens[i].substring(1)));
                } else {
                    field(tokens[i], upper);
                }
            }
            return new OptionLine(
                    hertzPerUnit == null ? DEFAULT.hertzPerUnit : hertzPerUnit,
                    unit == null ? DEFAULT.unit : unit,
                    parameter == null ? DEFAULT.parameter : parameter,
                    format == null ? DEFAULT.format : format,
                    references == null ? DEFAULT.referenceOhm : references);
        }

        private void field(String token, String upper) {
            if (upper.endsWith("HZ")) {
                once("frequency unit", hertzPerUnit);
                hertzPerUnit = hertz(upper);
                if (hertzPerUnit == 0) {
                    throw refused("the frequency unit " + Phrase.quoted(token) + " is not one of Hz, kHz, MHz and GHz");
                }
                unit = upper.replace("HZ", "Hz").replace("K", "k");
                return;
            }
            switch (upper) {
                case "S", "Z", "Y" -> {
                    once("parameter", parameter);
                    parameter = NetworkData.Parameter.valueOf(upper);
                }
                case "RI", "MA", "DB" -> {
                    once("number format", format);
                    format = ComplexFormat.valueOf(upper);
                }
                case "H", "G" -> throw refused("the file holds hybrid (" + upper + ") parameters, which are not read;"
                        + " save it as S, Z or Y parameters");
                default -> throw refused("the option line holds " + Phrase.quoted(token)
                        + ", which is no frequency unit, parameter, number format or reference");
            }
        }

        /** Returns the index of the last token used. Several references must close the line, one may stand anywhere. */
        private int references(String[] tokens, int from) {
            once("reference", references);
            List<Double> found = new ArrayList<>();
            int i = from;
            while (i < tokens.length && NumberText.isNumber(tokens[i], false)) {
                found.add(reference(tokens[i]));
                i++;
            }
            if (found.isEmpty()) {
                throw refused("R in the option line must be followed by the reference resistance in ohm");
            }
            if (found.size() > 1 && i < tokens.length) {
                throw refused("references of several ports must stand at the end of the option line, before "
                        + Phrase.quoted(tokens[i]));
            }
            references = List.copyOf(found);
            return i - 1;
        }

        private double reference(String token) {
            double ohm = NumberText.parse(token, false);
            if (!(ohm > 0)) {
                throw refused("the reference resistance must be a number above 0, not " + Phrase.quoted(token));
            }
            return ohm;
        }

        private void once(String what, Object present) {
            if (present != null) {
                throw refused("the option line gives the " + what + " twice");
            }
        }

        private SweepFileException refused(String reason) {
            return new SweepFileException(line.number(), reason);
        }
    }
}
