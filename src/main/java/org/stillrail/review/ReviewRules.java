package org.stillrail.review;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.bank.Banks;
import org.stillrail.project.Projects;

/** Who may take which step with a revision. The pages ask before they show a form, and every step asks before it writes. */
@Component
class ReviewRules {

    private final Banks banks;
    private final Projects projects;
    private final ReviewedRevisions revisions;

    ReviewRules(Banks banks, Projects projects, ReviewedRevisions revisions) {
        this.banks = banks;
        this.projects = projects;
        this.revisions = revisions;
    }

    /** Whether the next signature is the last that the project asks for, and so approves. */
    boolean isLastSignature(Bank bank, int given) {
        return given + 1 >= projects.signatures(projects.requireRail(bank.railId()).projectId());
    }

    /** Empty where the person may take the step with the revision as it stands. */
    Optional<Refusal> refusal(ReviewStep step, Bank bank, CurrentPerson person) {
        if (bank.isScratch()) {
            return refuse(Refusal.Kind.STATE, "A scratch bank has no rail to be reviewed against.");
        }
        Optional<Refusal> role = step == ReviewStep.SUBMITTED ? notMember(bank, person) : noReviewer(step, person);
        if (role.isPresent()) {
            return role;
        }
        if (!step.leadsFrom(bank.state())) {
            return refuse(Refusal.Kind.STATE, step.wrongState(bank));
        }
        return switch (step) {
            case SUBMITTED -> leftBehind(bank)
                    .or(() -> stale(bank, "Save the bank again to judge it by the newer one, then submit that revision."));
            case APPROVED, SIGNED -> ownWork(step, bank, person)
                    .or(() -> signedAlready(bank, person))
                    .or(() -> newerApproved(bank))
                    .or(() -> stale(bank, "It can be returned, so that a new revision is judged by the newer one."));
            case RETURNED, RECALLED -> ownWork(step, bank, person);
            case SUPERSEDED -> Optional.empty();
        };
    }

    /** @throws RuntimeException of the refusal, if there is one */
    void require(ReviewStep step, Bank bank, CurrentPerson person) {
        refusal(step, bank, person).ifPresent(refusal -> {
            throw refusal.asException();
        });
    }

    private Optional<Refusal> notMember(Bank bank, CurrentPerson person) {
        return banks.mayEdit(bank, person) ? Optional.empty()
                : refuse(Refusal.Kind.PERSON, "Only engineers of this project may submit its banks.");
    }

    private static Optional<Refusal> noReviewer(ReviewStep step, CurrentPerson person) {
        return person.has(Role.REVIEWER) ? Optional.empty()
                : refuse(Refusal.Kind.PERSON, "Only a reviewer may " + step.verb() + " a bank.");
    }

    private Optional<Refusal> ownWork(ReviewStep step, Bank bank, CurrentPerson person) {
        return revisions.ownPart(bank, person.id())
                .map(part -> new Refusal(Refusal.Kind.OWN_WORK, part + "; somebody else has to " + step.verb() + " it."));
    }

    private Optional<Refusal> signedAlready(Bank bank, CurrentPerson person) {
        return revisions.signedBy(bank.revision().id(), person.id())
                ? refuse(Refusal.Kind.OWN_WORK, "You signed this revision already; the project asks for somebody else's signature beside yours.") : Optional.empty();
    }

    private Optional<Refusal> leftBehind(Bank bank) {
        return bank.isLatest() ? Optional.empty() : refuse(Refusal.Kind.OVERTAKEN, "Revision " + bank.latestNumber()
                + " is newer; only the newest revision of a bank can be submitted.");
    }

    private Optional<Refusal> newerApproved(Bank bank) {
        return revisions.newestApproved(bank.id()).filter(number -> number > bank.revision().number())
                .map(number -> new Refusal(Refusal.Kind.OVERTAKEN, "Revision " + number + ", a newer one, is approved already."));
    }

    private Optional<Refusal> stale(Bank bank, String remedy) {
        return projects.requireRail(bank.railId()).revision().id().equals(bank.document().railRevisionId()) ? Optional.empty()
                : refuse(Refusal.Kind.OVERTAKEN, "The rail has changed since this revision was saved: a newer revision of the rail "
                        + "asks something else. " + remedy);
    }

    private static Optional<Refusal> refuse(Refusal.Kind kind, String sentence) {
        return Optional.of(new Refusal(kind, sentence));
    }
}
