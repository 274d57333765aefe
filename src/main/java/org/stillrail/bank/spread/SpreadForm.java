package org.stillrail.bank.spread;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.stillrail.electrical.evaluation.SpreadQuestion;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.Tolerance;
import org.stillrail.web.Form;

/** Between the address of a spread page and what is asked; every field stands in the address, so a link gives the same result again. */
final class SpreadForm {

    static final int MOST_RUNS = 50_000;

    private static final String LOT = "lot";
    private static final String SINGLE = "single";
    private static final String NEW = "new";
    private static final String OLD = "old";
    private static final String DRAWN = "drawn";
    private static final String LEFT_OUT = "out";

    private SpreadForm() {
    }

    /** Null where a field is wrong; the form then says which. */
    static SpreadQuestion read(Form form) {
        Integer runs = form.whole("runs", "Number of banks", 1, MOST_RUNS, true);
        Long seed = form.read("seed", "Seed", true, SpreadForm::seed);
        Tolerance.Shape shape = form.read("shape", "Distribution", true, text -> choice(Tolerance.Shape.class, text));
        Boolean lots = form.read("parts", "Parts of a branch", true, text -> either(text, LOT, SINGLE));
        Axis ambient = form.read("ambient", "Ambient", true, text -> choice(Axis.class, text));
        Boolean old = form.read("age", "Age", true, text -> either(text, OLD, NEW));
        Axis input = form.read("input", "Input voltage", true, text -> choice(Axis.class, text));
        Boolean stress = form.read("stress", "Stress of the parts", false, text -> either(text, DRAWN, LEFT_OUT));
        boolean stepped = Boolean.TRUE.equals(form.read("step", "Load step", false, text -> either(text, DRAWN, LEFT_OUT)));
        if (stepped && runs != null && runs > SpreadQuestion.MOST_STEPPED) {
            form.errors().add("runs", "Number of banks must be from 1 to " + SpreadQuestion.MOST_STEPPED + " where the load step is drawn");
        }
        return form.errors().none() ? new SpreadQuestion(runs, seed, shape, lots, ambient, old, input, Boolean.TRUE.equals(stress), stepped) : null;
    }

    static String query(SpreadQuestion question) {
        return "?runs=" + question.runs() + "&seed=" + question.seed() + "&shape=" + key(question.shape()) + "&parts="
                + (question.lots() ? LOT : SINGLE) + "&ambient=" + key(question.ambient()) + "&age=" + (question.old() ? OLD : NEW)
                + "&input=" + key(question.input()) + "&stress=" + (question.stress() ? DRAWN : LEFT_OUT)
                + "&step=" + (question.loadStep() ? DRAWN : LEFT_OUT);
    }

    static Map<String, String> shapes() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(key(Tolerance.Shape.UNIFORM), words(Tolerance.Shape.UNIFORM));
        choices.put(key(Tolerance.Shape.TRIANGULAR), words(Tolerance.Shape.TRIANGULAR));
        choices.put(key(Tolerance.Shape.NORMAL), words(Tolerance.Shape.NORMAL));
        return choices;
    }

    static String words(Tolerance.Shape shape) {
        return switch (shape) {
            case UNIFORM -> "even between the bounds";
            case TRIANGULAR -> "triangular between the bounds";
            case NORMAL -> "normal, the bounds at 3 sigma, cut off there";
        };
    }

    static Map<String, String> parts() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(LOT, "from one lot: they stray together");
        choices.put(SINGLE, "each by itself");
        return choices;
    }

    static Map<String, String> ages() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(NEW, "new");
        choices.put(OLD, "end of the rail's life");
        return choices;
    }

    static Map<String, String> further() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(LEFT_OUT, "left out");
        choices.put(DRAWN, "drawn too");
        return choices;
    }

    /** @param low in words, with the others */
    static Map<String, String> places(String low, String nominal, String high) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(key(Axis.LOW), low);
        choices.put(key(Axis.NOMINAL), nominal);
        choices.put(key(Axis.HIGH), high);
        return choices;
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static long seed(String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("Seed must be a whole number, not '" + text + "'", e);
        }
    }

    private static <E extends Enum<E>> E choice(Class<E> type, String text) {
        try {
            return Enum.valueOf(type, text.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("Choose one of the list", e);
        }
    }

    private static boolean either(String text, String yes, String no) {
        if (!text.equals(yes) && !text.equals(no)) {
            throw new IllegalArgumentException("Choose one of the list");
        }
        return text.equals(yes);
    }
}
