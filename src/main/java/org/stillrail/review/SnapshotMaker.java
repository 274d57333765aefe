package org.stillrail.review;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BranchDocument;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Revision;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationFigures;
import org.stillrail.library.Library;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.Part;
import org.stillrail.library.Sweep;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;

/** Puts together what a submission freezes. */
@Component
class SnapshotMaker {

    private final Projects projects;
    private final Library library;

    SnapshotMaker(Projects projects, Library library) {
        this.projects = projects;
        this.library = library;
    }

    /** @param evaluation of this revision of the bank */
    Snapshot make(Bank bank, Evaluation evaluation, List<Concession> concessions, String remark, CurrentPerson person, OffsetDateTime at) {
        SnapshotDocument document = new SnapshotDocument(
                SnapshotDocument.FORMAT,
                new SnapshotDocument.Submitted(person.id(), person.displayName(), at.toInstant(), remark),
                bank(bank),
                rail(projects.requireRailRevision(bank.document().railRevisionId())),
                bank.document().branches().stream().flatMap(BranchDocument::parts).map(BranchDocument.Alternate::partRevisionId).distinct()
                        .map(id -> part(library.findRevision(id).orElseThrow())).toList(),
                concessions.stream().map(SnapshotDocument.Conceded::of).toList(),
                evaluation.input(),
                EvaluationFigures.of(evaluation));
        return Snapshot.of(bank.revision().id(), CanonicalJson.write(document).getBytes(StandardCharsets.UTF_8),
                evaluation.input().methodVersion(), at);
    }

    private static SnapshotDocument.BankIdentity bank(Bank bank) {
        Revision<?> revision = bank.revision();
        return new SnapshotDocument.BankIdentity(bank.id(), bank.name(), revision.id(), revision.number(), revision.sha256(),
                revision.author(), revision.madeAt().toInstant());
    }

    private SnapshotDocument.RailIdentity rail(Rail rail) {
        Revision<?> revision = rail.revision();
        return new SnapshotDocument.RailIdentity(rail.projectId(), projects.require(rail.projectId()).name(), rail.id(), rail.name(),
                revision.id(), revision.number(), revision.sha256());
    }

    private SnapshotDocument.PartIdentity part(Part part) {
        Revision<?> revision = part.revision();
        return new SnapshotDocument.PartIdentity(part.id(), part.partNumber(), revision.id(), revision.number(), revision.sha256(),
                sweeps(part).map(SnapshotMaker::sweep).toList());
    }

    /** The chosen ones, then the others of the sample of one that was chosen alone. */
    private Stream<Sweep> sweeps(Part part) {
        ModelChoice choice = part.document().model();
        if (choice.sweepId() == null) {
            return choice.sweeps().stream().map(id -> library.findSweep(id).orElseThrow());
        }
        Sweep chosen = library.findSweep(choice.sweepId()).orElseThrow();
        String sample = chosen.provenance().sample();
        return Stream.concat(Stream.of(chosen), library.sweepsOf(part.id()).stream()
                .filter(other -> sample != null && sample.equals(other.provenance().sample()) && !other.id().equals(chosen.id())));
    }

    private static SnapshotDocument.SweepIdentity sweep(Sweep sweep) {
        return new SnapshotDocument.SweepIdentity(sweep.id(), sweep.fileName(), sweep.sha256(), sweep.rawSha256());
    }
}
