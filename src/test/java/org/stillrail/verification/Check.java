package org.stillrail.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;

/**
 * One comparison with something outside the program, written so that it can be read in the test and in docs/verification.md:
 *
 * <pre>{@code
 * Check.that(Topic.RIPPLE, "Peak-to-peak ripple of a buck into a capacitance")
 *         .source(Source.fromMemory("standard steady-state result"))
 *         .expected("V", 0.00254521277).relative(1e-6)
 *         .got(ripple.peakToPeakV());
 * }</pre>
 *
 * The last call asserts and records. What a test compares only with the program itself stays a plain assertion.
 */
public final class Check {

    private final Topic topic;
    private final String subject;
    private Source source;
    private String unit = "";
    private double[] expected;
    private String expectedWords;
    private Tolerance tolerance = Tolerance.EXACT;

    private Check(Topic topic, String subject) {
        this.topic = topic;
        this.subject = subject;
    }

    /**
     * Begins a check.
     *
     * @param subject what is checked, in one phrase that stands for itself, unique within its test class; numbers in it that stand
     *                there as Java prints them are shortened
     */
    public static Check that(Topic topic, String subject) {
        return new Check(topic, Figures.shortened(subject));
    }

    public Check source(Source from) {
        source = from;
        return this;
    }

    /** The expected values, all in one unit ("" for a ratio). */
    public Check expected(String ofUnit, double... values) {
        unit = ofUnit;
        expected = values.clone();
        expectedWords = Figures.words(values, ofUnit);
        return this;
    }

    /** An expected text or list, compared exactly. */
    public Check expected(String words) {
        expectedWords = words;
        return this;
    }

    /** Tolerance as a share of each expected value. */
    public Check relative(double share) {
        tolerance = new Tolerance(share, Tolerance.Kind.RELATIVE, "");
        return this;
    }

    /** Tolerance of each value as a share of the largest expected one. */
    public Check relativeToLargest(double share) {
        tolerance = new Tolerance(share, Tolerance.Kind.OF_LARGEST, unit);
        return this;
    }

    /** Tolerance in the unit of the values. */
    public Check absolute(double size) {
        tolerance = new Tolerance(size, Tolerance.Kind.ABSOLUTE, unit);
        return this;
    }

    /** Ends a check of numbers: one for each expected value. */
    public void got(double... values) {
        assertThat(values).as(subject).hasSameSizeAs(expected);
        Tolerance each = tolerance.forLargest(Arrays.stream(expected).map(Math::abs).max().orElseThrow());
        double worst = 0;
        double error = 0;
        for (int i = 0; i < values.length; i++) {
            worst = Math.max(worst, each.share(expected[i], values[i]));
            error = Math.max(error, each.error(expected[i], values[i]));
        }
        String got = Figures.listed(values) ? Figures.words(values, unit) : differenceWords(error);
        end(got, worst);
    }

    /** Ends a check of a text. */
    public void gotText(Object text) {
        assertThat(String.valueOf(text)).as(subject).isEqualTo(expectedWords);
        end(String.valueOf(text), 0);
    }

    /**
     * Ends one of many comparisons under the same subject, as of random cases: only the worst of them is recorded. What is expected
     * is described by {@link #expected(String)}; an absolute tolerance is in {@code ofUnit}.
     */
    public void compare(String ofUnit, double reference, double value) {
        unit = ofUnit;
        tolerance = new Tolerance(tolerance.size(), tolerance.kind(), ofUnit);
        end(differenceWords(tolerance.error(reference, value)), tolerance.share(reference, value));
    }

    private String differenceWords(double error) {
        return "off by at most " + switch (tolerance.kind()) {
            case RELATIVE -> Figures.size(100 * error) + " %";
            case ABSOLUTE, OF_LARGEST, EXACT -> unit.isEmpty() ? Figures.size(error) : Figures.size(error) + " " + unit;
        };
    }

    private void end(String got, double share) {
        assertThat(source).as("source of: " + subject).isNotNull();
        assertThat(share).as("%s: expected %s, got %s; error over tolerance (%s)", subject, expectedWords, got, tolerance.words())
                .isLessThanOrEqualTo(1);
        Records.add(new Record(topic, testClass(), subject, source, expectedWords, got, tolerance.words(), share));
    }

    private static String testClass() {
        return StackWalker.getInstance().walk(frames -> frames.map(frame -> frame.getClassName().replaceAll(".*\\.|\\$.*", ""))
                .filter(name -> name.endsWith("Test")).findFirst().orElseThrow());
    }
}
