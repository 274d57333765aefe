package org.stillrail.review;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.web.Form;

/** The concessions of a submission as typed: three fields for each, such as {@code concede-quiet-band-reason}. */
final class SubmissionForm {

    private final Form form;
    private final Map<UUID, String> members;

    private SubmissionForm(Form form, Map<UUID, String> members) {
        this.form = form;
        this.members = members;
    }

    static String field(Requirement requirement, ConcessionRules.Part part) {
        return "concede-" + requirement.id() + "-" + switch (part) {
            case REASON -> "reason";
            case OWNER -> "owner";
            case END -> "end";
        };
    }

    /**
     * Reads the concessions; what is wrong stands in {@code form.errors()} beside its field.
     *
     * @param members names by id
     */
    static List<Concession> read(Form form, List<Verdict> verdicts, Map<UUID, String> members, LocalDate today) {
        SubmissionForm submission = new SubmissionForm(form, members);
        List<Concession> concessions = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            submission.add(verdict, concessions);
        }
        for (ConcessionRules.Problem problem : ConcessionRules.problems(verdicts, concessions, today, members.keySet())) {
            String field = field(problem.requirement(), problem.part());
            // A concession that lacks only its owner or end has its message there.
            if (problem.part() != ConcessionRules.Part.REASON || form.isBlank(field)) {
                form.errors().add(field, problem.sentence());
            }
        }
        return concessions;
    }

    private void add(Verdict verdict, List<Concession> concessions) {
        Requirement requirement = verdict.requirement();
        String reasonField = field(requirement, ConcessionRules.Part.REASON);
        if (!verdict.outcome().needsConcession()) {
            if (!form.isBlank(reasonField)) {
                form.errors().add("", requirement.label() + " is " + verdict.outcome().label() + ": there is nothing to concede.");
            }
            return;
        }
        String reason = form.text(reasonField, "The reason", false);
        UUID owner = form.read(field(requirement, ConcessionRules.Part.OWNER), "The owner", true, SubmissionForm::id);
        LocalDate end = form.read(field(requirement, ConcessionRules.Part.END), "The end", true, SubmissionForm::day);
        if (reason != null && owner != null && end != null) {
            concessions.add(new Concession(requirement, reason, owner, members.getOrDefault(owner, ""), end));
        }
    }

    private static UUID id(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("Choose an owner from the list", e);
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("'" + text + "' is not a day: write it as 2031-12-24", e);
        }
    }
}
