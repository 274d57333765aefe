package org.stillrail.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankPanel;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;
import org.stillrail.library.Library;
import org.stillrail.library.PartChoice;
import org.stillrail.library.Vetting;
import org.stillrail.project.Projects;
import org.stillrail.web.Form;

/** Puts the review of a revision on the page of its bank: what happened, and the steps that this person may take. */
@Component
class ReviewPanel implements BankPanel {

    private final Reviews reviews;
    private final ReviewRules rules;
    private final ReviewRows rows;
    private final Snapshots snapshots;
    private final Timeline timeline;
    private final Projects projects;
    private final Library library;

    ReviewPanel(
            Reviews reviews, ReviewRules rules, ReviewRows rows, Snapshots snapshots, Timeline timeline, Projects projects, Library library) {
        this.reviews = reviews;
        this.rules = rules;
        this.rows = rows;
        this.snapshots = snapshots;
        this.timeline = timeline;
        this.projects = projects;
        this.library = library;
    }

    @Override
    public String fragment() {
        return "review/panel :: panel";
    }

    @Override
    public void addTo(Bank bank, CurrentPerson person, Model model) {
        if (!bank.isScratch()) {
            model.addAttribute("review", view(bank, person, Form.empty(), (Evaluation) model.getAttribute(BankPanel.EVALUATION)));
        }
    }

    /**
     * The review as one person sees it.
     *
     * @param form  what was typed
     * @param given evaluation of the revision, or null where it has not been done
     */
    ReviewView view(Bank bank, CurrentPerson person, Form form, Evaluation given) {
        Evaluation evaluation = given;
        String refused = null;
        try {
            evaluation = given == null ? reviews.evaluate(bank) : given;
        } catch (EvaluationRefusedException e) {
            refused = e.getMessage() + ".";
        }
        UUID revisionId = bank.revision().id();
        Optional<Snapshot> snapshot = snapshots.ofRevision(revisionId);
        List<ReviewRecord.Signed> signatures = snapshot.map(snapshots::signed).orElse(List.of());
        Optional<Refusal> submit = rules.refusal(ReviewStep.SUBMITTED, bank, person);
        return new ReviewView(bank, timeline.of(bank), rows.concessions(revisionId), snapshot.map(Snapshot::id).orElse(null),
                snapshot.map(Snapshot::sha256).orElse(null), signatures,
                rules.isLastSignature(bank, signatures.size()), notVetted(bank), submit.isEmpty() ? submission(bank, evaluation, refused) : null, mayComment(person),
                offer(ReviewStep.APPROVED, bank, person), offer(ReviewStep.RETURNED, bank, person), offer(ReviewStep.RECALLED, bank, person),
                submit.filter(Refusal::worthSaying).map(Refusal::sentence).orElse(null), Signature.MEANING, subjects(bank, evaluation), form);
    }

    private List<String> notVetted(Bank bank) {
        return library.chosen(bank.document().partIds()).stream().filter(part -> part.vetting() != Vetting.VETTED).map(PartChoice::standing).toList();
    }

    /** Members of a bank's project who may own a concession, names by id. */
    Map<UUID, String> members(Bank bank) {
        Map<UUID, String> members = new LinkedHashMap<>();
        projects.members(projects.requireRail(bank.railId()).projectId())
                .forEach(member -> members.put(member.personId(), member.displayName()));
        return members;
    }

    private List<ReviewView.Subject> subjects(Bank bank, Evaluation evaluation) {
        List<Comment> said = rows.commentsOfBank(bank.id()).stream().filter(comment -> comment.revisionId().equals(bank.revision().id())).toList();
        return CommentSubject.of(bank.document(), evaluation).stream().map(subject -> {
            List<Comment> tied = said.stream().filter(comment -> comment.subject().equals(subject)).toList();
            return new ReviewView.Subject(subject.anchor(), subject.words(bank.document()), tied.size(),
                    tied.isEmpty() ? null : tied.get(0).anchor());
        }).toList();
    }

    private ReviewView.Submission submission(Bank bank, Evaluation evaluation, String refused) {
        Map<String, String> owners = new LinkedHashMap<>();
        owners.put("", "choose");
        members(bank).forEach((id, name) -> owners.put(id.toString(), name));
        return new ReviewView.Submission(evaluation == null ? List.of()
                : evaluation.verdicts().stream().filter(verdict -> verdict.outcome().needsConcession()).toList(), owners, refused);
    }

    private ReviewView.Offer offer(ReviewStep step, Bank bank, CurrentPerson person) {
        Optional<Refusal> refusal = rules.refusal(step, bank, person);
        return new ReviewView.Offer(refusal.isEmpty(), refusal.filter(Refusal::worthSaying).map(Refusal::sentence).orElse(null));
    }

    private static boolean mayComment(CurrentPerson person) {
        return person.has(Role.ENGINEER) || person.has(Role.LIBRARIAN) || person.has(Role.REVIEWER);
    }
}
