package org.stillrail.electrical.requirement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class VerdictTest {

    private static Verdict verdict(Requirement requirement, Outcome outcome, Double margin) {
        return new Verdict(requirement, outcome, Bound.AT_MOST, null, null, "V", margin, null, null, "", Verdict.Explanation.NONE, null, null,
                List.of());
    }

    @Test
    void aMarginIsPositiveOnTheSideThatKeepsTheLimit() {
        assertThat(Bound.AT_MOST.margin(10, 8)).isCloseTo(0.2, within(1e-12));
        assertThat(Bound.AT_MOST.margin(10, 12)).isCloseTo(-0.2, within(1e-12));
        assertThat(Bound.AT_LEAST.margin(10, 12)).isCloseTo(0.2, within(1e-12));
        assertThat(Bound.AT_LEAST.margin(10, 8)).isCloseTo(-0.2, within(1e-12));
    }

    @Test
    void unknownIsNotMet() {
        assertThat(verdict(Requirement.RIPPLE, Outcome.UNKNOWN, null).met()).isFalse();
        assertThat(Outcome.UNKNOWN.needsConcession()).isTrue();
        assertThat(Outcome.NOT_ASKED.needsConcession()).isFalse();
        assertThat(Outcome.NOT_MODELLED.judged()).isFalse();
    }

    @Test
    void worstComesFirst() {
        List<Verdict> expected = List.of(
                verdict(Requirement.DAMPING, Outcome.NOT_MET, null),
                verdict(Requirement.RIPPLE, Outcome.NOT_MET, -0.5),
                verdict(Requirement.WINDOW, Outcome.NOT_MET, -0.1),
                verdict(Requirement.DEVIATION, Outcome.UNKNOWN, null),
                verdict(Requirement.HEIGHT, Outcome.MET, 0.01),
                verdict(Requirement.AREA, Outcome.MET, 0.6),
                verdict(Requirement.QUIET_BAND, Outcome.MET, null),
                verdict(Requirement.BULK_CHARGE, Outcome.NOT_MODELLED, null),
                verdict(Requirement.COST, Outcome.NOT_ASKED, null));
        List<Verdict> shuffled = new ArrayList<>(expected);
        Collections.shuffle(shuffled, new Random(3));
        shuffled.sort(Verdict.WORST_FIRST);
        assertThat(shuffled).isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource(Requirement.class)
    void idsAreReadBack(Requirement requirement) {
        assertThat(Requirement.ofId(requirement.id())).isEqualTo(requirement);
        assertThat(requirement.equation()).isEqualTo("verdict-" + requirement.id());
    }
}
