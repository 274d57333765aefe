package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.bank.BankState;

/** Every step from every state, as one table. */
class ReviewStepTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # from       | SUBMITTED | RETURNED | APPROVED | SUPERSEDED | RECALLED
            IN_WORK      | IN_REVIEW |          |          |            |
            IN_REVIEW    |           | RETURNED | APPROVED | SUPERSEDED |
            RETURNED     |           |          |          |            |
            APPROVED     |           |          |          | SUPERSEDED | RECALLED
            SUPERSEDED   |           |          |          |            |
            RECALLED     |           |          |          |            |
            """)
    void leadsOnlyWhereTheTableSays(
            BankState from, BankState submitted, BankState returned, BankState approved, BankState superseded, BankState recalled) {
        Map<ReviewStep, BankState> expected = new EnumMap<>(ReviewStep.class);
        expected.put(ReviewStep.SUBMITTED, submitted);
        expected.put(ReviewStep.RETURNED, returned);
        expected.put(ReviewStep.APPROVED, approved);
        expected.put(ReviewStep.SIGNED, from == BankState.IN_REVIEW ? BankState.IN_REVIEW : null);
        expected.put(ReviewStep.SUPERSEDED, superseded);
        expected.put(ReviewStep.RECALLED, recalled);
        for (ReviewStep step : ReviewStep.values()) {
            assertThat(step.leadsFrom(from) ? step.to() : null).as(step + " from " + from).isEqualTo(expected.get(step));
        }
    }

    @Test
    void returnedSupersededAndRecalledRevisionsStayAsTheyAre() {
        Set<BankState> last = EnumSet.allOf(BankState.class);
        last.removeIf(state -> Set.of(ReviewStep.values()).stream().anyMatch(step -> step.leadsFrom(state)));
        assertThat(last).containsExactlyInAnyOrder(BankState.RETURNED, BankState.SUPERSEDED, BankState.RECALLED);
    }

    @ParameterizedTest
    @EnumSource(value = ReviewStep.class, names = "SIGNED", mode = EnumSource.Mode.EXCLUDE)
    void noStepButTheFirstOfTwoSignaturesLeadsToWhereItComesFrom(ReviewStep step) {
        assertThat(step.leadsFrom(step.to())).isFalse();
    }
}
