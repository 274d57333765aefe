package org.stillrail.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/** One concession for each verdict that is not met or unknown, and for no other. */
final class ConcessionRules {

    /** Which part of a concession is meant. */
    enum Part { REASON, OWNER, END }

    /** @param sentence for the person who submits */
    record Problem(Requirement requirement, Part part, String sentence) {
    }

    private ConcessionRules() {
    }

    /**
     * Everything that is wrong, in the order of the verdicts.
     *
     * @param today   the day of submission
     * @param members of the project
     */
    static List<Problem> problems(List<Verdict> verdicts, List<Concession> concessions, LocalDate today, Set<UUID> members) {
        List<Problem> problems = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            Requirement requirement = verdict.requirement();
            Optional<Concession> given = concessions.stream().filter(each -> each.requirement() == requirement).findFirst();
            if (given.isEmpty() && verdict.outcome().needsConcession()) {
                problems.add(new Problem(requirement, Part.REASON, requirement.label() + " is " + verdict.outcome().label()
                        + ": a concession with a reason, an owner and an end is needed"));
            }
            if (given.isPresent() && !verdict.outcome().needsConcession()) {
                problems.add(new Problem(requirement, Part.REASON, requirement.label() + " is " + verdict.outcome().label()
                        + ": there is nothing to concede"));
            } else {
                given.ifPresent(concession -> check(concession, today, members, problems));
            }
        }
        return problems;
    }

    private static void check(Concession concession, LocalDate today, Set<UUID> members, List<Problem> problems) {
        if (concession.reason().isBlank()) {
            problems.add(new Problem(concession.requirement(), Part.REASON, "The reason is missing"));
        }
        if (!members.contains(concession.ownerId())) {
            problems.add(new Problem(concession.requirement(), Part.OWNER, "The owner must be a member of the project"));
        }
        if (!concession.endsOn().isAfter(today)) {
            problems.add(new Problem(concession.requirement(), Part.END, "The end must be after today, " + today));
        }
    }
}
