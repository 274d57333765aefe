package org.stillrail.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankEvidence;
import org.stillrail.bank.BankState;
import org.stillrail.library.Vetting;
import org.stillrail.project.Rail;
import org.stillrail.review.ReviewRecord;

/** Sentences that a reader outside the tool must see before the figures. */
class ReportCautions {

    private ReportCautions() {
    }

    /** @param rail null for a scratch bank */
    static List<String> ofRevision(Bank bank, Rail rail) {
        List<String> cautions = new ArrayList<>();
        if (bank.state() != BankState.APPROVED) {
            cautions.add("This revision is " + bank.state().label() + ", not approved: do not build from it.");
        }
        if (rail != null && !rail.isLatest()) {
            cautions.add("The rail has changed since: revision " + rail.latestNumber() + " asks something else.");
        }
        return cautions;
    }

    /** A part, or an alternate, that says something else by now or is not simply vetted today; each once. */
    static List<String> ofParts(List<BankEvidence.ChangedPart> changed, List<PartLine> lines) {
        Set<UUID> worded = changed.stream().map(BankEvidence.ChangedPart::partId).collect(Collectors.toSet());
        Stream<String> vetting = lines.stream().flatMap(line -> line.choices().stream())
                .filter(part -> part.vetting() != Vetting.VETTED && !(part.vetting() != Vetting.PROPOSED && worded.contains(part.id())))
                .map(part -> part.partNumber() + " is " + part.vetting().label() + (part.vettingNote() == null ? "." : ": " + part.vettingNote() + "."));
        return Stream.concat(changed.stream().map(BankEvidence.ChangedPart::sentence), vetting).distinct().toList();
    }

    static List<String> ofReview(ReviewRecord review, LocalDate today) {
        return Stream.of(ofSignatures(review), ofConcessions(review, today)).flatMap(List::stream).toList();
    }

    private static List<String> ofSignatures(ReviewRecord review) {
        List<String> cautions = new ArrayList<>();
        if (review.snapshot() != null && !review.snapshot().intact()) {
            cautions.add("The stored snapshot does not give its SHA-256 any more: it was changed after submission.");
        }
        if (review.signatures().stream().anyMatch(signature -> !signature.holds())) {
            cautions.add("A signature does not hold for the stored snapshot.");
        }
        if (review.snapshot() != null) {
            cautions.addAll(review.snapshot().differences());
            if (review.snapshot().refused() != null) {
                cautions.add("The snapshot could not be worked out again: " + review.snapshot().refused());
            }
        }
        return cautions;
    }

    private static List<String> ofConcessions(ReviewRecord review, LocalDate today) {
        return review.concessions().stream().filter(concession -> concession.endsOn().isBefore(today))
                .map(concession -> "The concession on " + concession.requirement() + " ended on " + concession.endsOn() + "; its owner is "
                        + concession.owner() + ".")
                .toList();
    }
}
