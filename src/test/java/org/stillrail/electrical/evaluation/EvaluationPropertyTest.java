package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/** What is true of verdicts whatever the figures. */
class EvaluationPropertyTest {

    private static final double ROUNDING = 1e-3;

    private static double value(EvaluationInput input, Requirement requirement) {
        return Rails.verdicts(input).on(requirement).value();
    }

    /** Ideal capacitances add up, so ripple and |Z| fall with each one. */
    @Property(tries = 40)
    void onePartMoreNeverRaisesTheRippleOfPureCapacitances(
            @ForAll @Scale(11) @DoubleRange(min = 1e-6, max = 1e-3) double first, @ForAll @Scale(11) @DoubleRange(min = 1e-6, max = 1e-3) double second,
            @ForAll @IntRange(min = 1, max = 8) int count) {
        EvaluationInput before = Rails.input(Rails.rippleOnly(0.05), Rails.inline("a", count, first, 0, 0), Rails.inline("b", 1, second, 0, 0));
        EvaluationInput after = before.withCount(0, count + 1);
        assertThat(value(after, Requirement.RIPPLE)).isLessThan(value(before, Requirement.RIPPLE));
        assertThat(value(after, Requirement.QUIET_BAND)).isLessThan(value(before, Requirement.QUIET_BAND));
    }

    /** Equal parts alone scale the whole impedance by their number. */
    @Property(tries = 40)
    void rippleOfEqualPartsFallsWithTheirNumber(
            @ForAll @Scale(11) @DoubleRange(min = 1e-6, max = 1e-3) double c, @ForAll @Scale(11) @DoubleRange(min = 1e-3, max = 0.1) double r,
            @ForAll @Scale(11) @DoubleRange(min = 1e-10, max = 1e-8) double l, @ForAll @IntRange(min = 1, max = 8) int count) {
        EvaluationInput one = Rails.input(Rails.rippleOnly(0.05), Rails.inline("a", 1, c, r, l));
        double single = value(one, Requirement.RIPPLE);
        assertThat(value(one.withCount(0, count), Requirement.RIPPLE) * count).isBetween(single * (1 - ROUNDING), single * (1 + ROUNDING));
    }

    @Property(tries = 40)
    void aMarginIsPositiveExactlyWhereTheVerdictIsMet(
            @ForAll @Scale(11) @DoubleRange(min = 1e-6, max = 1e-3) double c, @ForAll @Scale(11) @DoubleRange(min = 1e-3, max = 0.1) double r,
            @ForAll @Scale(11) @DoubleRange(min = 1e-4, max = 0.1) double limitV) {
        EvaluationInput input = Rails.input(Rails.rippleOnly(limitV), Rails.inline("a", 1, c, r, 1e-9));
        for (Verdict verdict : Rails.verdicts(input).verdicts()) {
            if (verdict.margin() != null) {
                assertThat(verdict.met()).isEqualTo(verdict.margin() >= 0);
            }
        }
    }
}
