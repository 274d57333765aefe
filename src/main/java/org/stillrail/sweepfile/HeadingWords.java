package org.stillrail.sweepfile;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the heading of a column says: kind, unit, and whether the values are negated, as in {@code -Im(Z)/Ohm}.
 *
 * @param kind null where the words are not known
 */
record HeadingWords(ColumnKind kind, String unit, boolean negated) {

    /** A longer cell is no heading, and would only keep the patterns busy. */
    private static final int LONGEST = 100;

    private static final Pattern UNIT_IN_BRACKETS = Pattern.compile(
            "(.*?)\\s*[,/]?\\s*[(\\[{]\\s*(?:in\\s+)?([^()\\[\\]{}]*?)\\s*[)\\]}]", Pattern.DOTALL);
    private static final Pattern UNIT_BEHIND_MARK = Pattern.compile("(.*\\S)\\s*[/,_ :]\\s*([^/,_ :]+)", Pattern.DOTALL);
    private static final Pattern RADIANS_PER_SECOND = Pattern.compile("(?i)(.*?)\\s*[/,_ (\\[]\\s*(rad/s)[)\\]]?");
    private static final Pattern NEGATED = Pattern.compile(
            "(?i)^(?:[-\u2212\u2013]|minus |neg(?:ative|ated)?[ .]+)\\s*(.*)", Pattern.DOTALL);

    /** What some instruments add to every heading. */
    private static final Pattern ADDITION = Pattern.compile("(?i)(?<=.)[-_ ]*(data|measured|meas)$");

    private static final Map<ColumnKind, Pattern> WORDS = words();

    static HeadingWords of(String heading) {
        if (heading.length() > LONGEST) {
            return new HeadingWords(null, "", false);
        }
        String text = ADDITION.matcher(heading.strip()).replaceFirst("");
        boolean negated = false;
        Matcher sign = NEGATED.matcher(text);
        if (sign.matches()) {
            negated = true;
            text = sign.group(1);
        }
        Named named = Named.of(text);
        String word = named.name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.,:;\\-*]", "").replace('\u2032', '\'')
                .replace('\u2019', '\'').replace("\u2033", "\"").replace("''", "\"");
        ColumnKind kind = scattering(word, named.unit);
        if (kind == null) {
            kind = kind(word);
        }
        if (kind == null || kind == ColumnKind.BLOCK) {
            return new HeadingWords(kind, "", false);
        }
        if (!named.unit.isEmpty() && Double.isNaN(kind.dimension().scale(named.unit))) {
            // A magnitude in decibel, or a phase in percent, is something else.
            return new HeadingWords(null, "", false);
        }
        return new HeadingWords(kind, named.unit, negated);
    }

    /** As it stands, then without the number of a trace in front or a remark in brackets behind. */
    private static ColumnKind kind(String word) {
        String bare = word.replaceFirst("^(trace|trc|tr|ch|channel)\\d+", "").replaceFirst("^impedance(?=.)", "");
        String withoutRemark = bare.replaceFirst("[(\\[{][^()\\[\\]{}]*[)\\]}]$", "");
        String withoutBrackets = bare.replaceAll("[()\\[\\]{}]", "");
        for (String tried : new String[] {word, bare, withoutRemark, withoutBrackets}) {
            for (Map.Entry<ColumnKind, Pattern> entry : WORDS.entrySet()) {
                if (entry.getValue().matcher(tried).matches()) {
                    return entry.getKey();
                }
            }
        }
        return null;
    }

    /** The name and the unit of a heading apart from each other. */
    private record Named(String name, String unit) {

        static Named of(String text) {
            Matcher perSecond = RADIANS_PER_SECOND.matcher(text);
            if (perSecond.matches()) {
                return new Named(perSecond.group(1), "rad/s");
            }
            for (Pattern pattern : new Pattern[] {UNIT_IN_BRACKETS, UNIT_BEHIND_MARK}) {
                Matcher matcher = pattern.matcher(text);
                if (matcher.matches() && Dimension.isUnit(matcher.group(2))) {
                    return new Named(matcher.group(1), matcher.group(2));
                }
            }
            return !text.isEmpty() && Dimension.FREQUENCY.scale(text) > 0 ? new Named("f", text) : new Named(text, "");
        }
    }

    /** {@code S21(REAL)}, {@code |S21|/dB}, {@code arg(S11)}, {@code S21 (dB)}. */
    private static ColumnKind scattering(String word, String unit) {
        Matcher matcher = Pattern.compile("(.*)s\\(?([12]),?1\\)?(.*)").matcher(word);
        if (!matcher.matches()) {
            return null;
        }
        String form = matcher.group(1) + " " + matcher.group(3);
        String key = "s" + matcher.group(2) + "1-";
        if (unit.equalsIgnoreCase("dB") || form.matches(".*(db|log).*")) {
            return ColumnKind.ofKey(key + "decibel").orElseThrow();
        }
        boolean angle = !unit.isEmpty() && Dimension.ANGLE.scale(unit) > 0;
        if (angle || form.matches(".*(ph|arg|ang|deg|\u2220).*")) {
            return ColumnKind.ofKey(key + "phase").orElseThrow();
        }
        if (form.matches(".*im.*")) {
            return ColumnKind.ofKey(key + "imaginary").orElseThrow();
        }
        if (form.matches(".*re.*")) {
            return ColumnKind.ofKey(key + "real").orElseThrow();
        }
        return form.matches(".*(mag|abs|lin|\\|).*") ? ColumnKind.ofKey(key + "magnitude").orElseThrow() : null;
    }

    private static Map<ColumnKind, Pattern> words() {
        Map<ColumnKind, String> words = new LinkedHashMap<>();
        words.put(ColumnKind.FREQUENCY, "f|fr|frq|freq\\w*|fr\u00e9quence|frec\\w*|hz|w|\u03c9|omega|angularfreq\\w*");
        words.put(ColumnKind.RESISTANCE, "(re|real|realpart)(of)?(\\(?\\[?z\\]?\\)?|impedance)?"
                + "|z\\(?\\[?(re|real)\\]?\\)?|z'|impedance(re|real)"
                + "|r|rs|rser|rseries|esr|resistance|seriesresistance|equivalentseriesresistance");
        words.put(ColumnKind.REACTANCE, "(im|imag|imaginary|imagpart|imaginarypart)(of)?(\\(?\\[?z\\]?\\)?|impedance)?"
                + "|z\\(?\\[?(im|imag)\\]?\\)?|z\"|impedanceim(ag)?|x|xs|reactance|seriesreactance");
        words.put(ColumnKind.MAGNITUDE, "\\|z\\||z|(abs|mod|mag|magnitude|modulus|amplitude)(of)?\\(?(z|impedance)?\\)?|z(abs|mod|mag)"
                + "|z\\((abs|mod|mag)\\)|\\|?impedance\\|?(magnitude|modulus)?");
        words.put(ColumnKind.PHASE, "(phase|phaseangle|theta|\u03b8|phi|\u03c6|\u03d5|arg|angle|ang|phz|\u2220)"
                + "(of)?\\(?\\|?(z|impedance)?\\|?\\)?"
                + "|z(phase|theta|phz|arg|ang|angle)|z\\((phase|theta|arg|ang)\\)|impedance(phase|angle|phaseangle)");
        words.put(ColumnKind.SERIES_CAPACITANCE, "cs|cser|cseries|seriescapacitance");
        words.put(ColumnKind.PARALLEL_CAPACITANCE, "cp|cpar|cparallel|parallelcapacitance");
        words.put(ColumnKind.SERIES_INDUCTANCE, "ls|lser|lseries|seriesinductance|esl");
        words.put(ColumnKind.PARALLEL_RESISTANCE, "rp|rpar|rparallel|parallelresistance|epr");
        words.put(ColumnKind.DISSIPATION, "d|df|tan\\(?(d|\u03b4|delta)\\)?|dissipation|dissipationfactor|loss(factor|tangent)");
        words.put(ColumnKind.QUALITY, "q|qfactor|qualityfactor");
        words.put(ColumnKind.CONDUCTANCE, "g|gp|conductance|(re|real)\\(?y\\)?|y(re|real)|y'");
        words.put(ColumnKind.SUSCEPTANCE, "b|bp|susceptance|(im|imag)\\(?y\\)?|y(im|imag)|y\"");
        words.put(ColumnKind.ADMITTANCE_MAGNITUDE, "\\|y\\||y|(abs|mod|mag)\\(?y\\)?|y(abs|mod|mag)|\\|?admittance\\|?");
        words.put(ColumnKind.ADMITTANCE_PHASE, "(phase|theta|\u03b8|phi|\u03c6|arg|angle)\\(?y\\)?"
                + "|y(phase|theta|arg|ang)|admittance(phase|angle)");
        words.put(ColumnKind.BLOCK, "(loop|cycle|sweep|block|run|repeat|iteration|curve|trace|dataset)(number|no|nr|index|idx|id|#)?");
        Map<ColumnKind, Pattern> patterns = new LinkedHashMap<>();
        words.forEach((kind, expression) -> patterns.put(kind, Pattern.compile(expression)));
        return patterns;
    }
}
