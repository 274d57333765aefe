package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/** A concession for each verdict that needs one, none for the others, each rule on both sides. */
class ConcessionRulesTest {

    private static final LocalDate TODAY = LocalDate.of(2031, 3, 4);
    private static final UUID MEMBER = UUID.randomUUID();

    private static Verdict verdict(Requirement requirement, Outcome outcome) {
        return new Verdict(requirement, outcome, Bound.AT_MOST, 1.0, 2.0, "V", -1.0, null, null, "Sentence.", Verdict.Explanation.NONE, null,
                null, List.of());
    }

    private static Concession concession(Requirement requirement, String reason, UUID owner, LocalDate end) {
        return new Concession(requirement, reason, owner, "Owner", end);
    }

    private static List<ConcessionRules.Problem> problems(List<Verdict> verdicts, Concession... concessions) {
        return ConcessionRules.problems(verdicts, List.of(concessions), TODAY, Set.of(MEMBER));
    }

    @Test
    void metNotAskedAndNotModelledNeedNone() {
        assertThat(problems(List.of(verdict(Requirement.RIPPLE, Outcome.MET), verdict(Requirement.COST, Outcome.NOT_ASKED),
                verdict(Requirement.DAMPING, Outcome.NOT_MODELLED)))).isEmpty();
    }

    @Test
    void notMetAndUnknownNeedOneEach() {
        List<Verdict> verdicts = List.of(verdict(Requirement.RIPPLE, Outcome.NOT_MET), verdict(Requirement.DAMPING, Outcome.UNKNOWN));
        assertThat(problems(verdicts)).extracting(ConcessionRules.Problem::requirement).containsExactly(Requirement.RIPPLE, Requirement.DAMPING);
        assertThat(problems(verdicts, concession(Requirement.RIPPLE, "why", MEMBER, TODAY.plusDays(1))))
                .extracting(ConcessionRules.Problem::requirement).containsExactly(Requirement.DAMPING);
        assertThat(problems(verdicts, concession(Requirement.RIPPLE, "why", MEMBER, TODAY.plusDays(1)),
                concession(Requirement.DAMPING, "why", MEMBER, TODAY.plusDays(1)))).isEmpty();
    }

    @Test
    void nothingIsConcededWhereNothingIsMissed() {
        for (Outcome outcome : List.of(Outcome.MET, Outcome.NOT_ASKED, Outcome.NOT_MODELLED)) {
            assertThat(problems(List.of(verdict(Requirement.RIPPLE, outcome)), concession(Requirement.RIPPLE, "why", MEMBER, TODAY.plusDays(1))))
                    .singleElement().extracting(ConcessionRules.Problem::sentence).asString().contains("nothing to concede");
        }
    }

    @Test
    void endsTomorrowAtTheEarliest() {
        List<Verdict> verdicts = List.of(verdict(Requirement.RIPPLE, Outcome.NOT_MET));
        assertThat(problems(verdicts, concession(Requirement.RIPPLE, "why", MEMBER, TODAY.plusDays(1)))).isEmpty();
        assertThat(problems(verdicts, concession(Requirement.RIPPLE, "why", MEMBER, TODAY)))
                .extracting(ConcessionRules.Problem::part).containsExactly(ConcessionRules.Part.END);
    }

    @Test
    void isOwnedByAMemberAndHasAReason() {
        assertThat(problems(List.of(verdict(Requirement.RIPPLE, Outcome.NOT_MET)),
                concession(Requirement.RIPPLE, " ", UUID.randomUUID(), TODAY.minusDays(1))))
                .extracting(ConcessionRules.Problem::part)
                .containsExactly(ConcessionRules.Part.REASON, ConcessionRules.Part.OWNER, ConcessionRules.Part.END);
    }
}
