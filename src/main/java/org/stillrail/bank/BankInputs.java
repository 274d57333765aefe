package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.evaluation.BranchEvidence;
import org.stillrail.electrical.evaluation.BranchEvidence.EsrMeaning;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.PartInput;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.PartDocument;
import org.stillrail.library.PartModel;
import org.stillrail.library.PartModels;
import org.stillrail.library.PartStressRatings;
import org.stillrail.project.Projects;
import org.stillrail.team.Settings;

/** From a bank's document to the frozen input of its evaluation: rail figures and models are looked up once, here. */
@Component
public class BankInputs {

    private final Library library;
    private final PartModels models;
    private final Projects projects;
    private final Settings settings;
    private final FrozenInputs frozen;

    BankInputs(Library library, PartModels models, Projects projects, Settings settings, FrozenInputs frozen) {
        this.frozen = frozen;
        this.library = library;
        this.models = models;
        this.projects = projects;
        this.settings = settings;
    }

    /** For what leaves the program or is kept: as it was frozen, where the revision was submitted; else of today. */
    public RecordedInput ofRecord(Bank bank) {
        return frozen.of(bank).map(input -> new RecordedInput(input, true)).orElseGet(() -> new RecordedInput(of(bank.document()), false));
    }

    /** With the library and the team's settings of today. */
    public EvaluationInput of(BankDocument document) {
        List<BranchInput> branches = document.branches().stream().map(branch -> placed(branch, branch.partRevisionId()).withAlternates(alternates(branch), branch.unfitted()))
                .toList();
        return new EvaluationInput(EvaluationInput.METHOD_VERSION, rail(document), branches, settings.current().evaluation(), document.distance());
    }

    /** What a bank is judged against, or read with. */
    public RailFigures rail(BankDocument document) {
        return document.railRevisionId() == null
                ? document.scratchRail() : projects.requireRailRevision(document.railRevisionId()).figures();
    }

    private BranchInput placed(BranchDocument branch, UUID partRevisionId) {
        return part(branch, partRevisionId)
                .withPlace(branch.node(), branch.mountingOrigin() == null ? null : branch.mountingOrigin().words());
    }

    private List<BranchInput> alternates(BranchDocument branch) {
        return branch.alternates() == null ? null : branch.alternates().stream().map(alternate -> placed(branch, alternate.partRevisionId())).toList();
    }

    private BranchInput part(BranchDocument branch, UUID partRevisionId) {
        if (partRevisionId == null) {
            return new BranchInput(branch.label(), branch.count(), null, null, null, PartInput.fixed(branch.inline()), branch.mounting(),
                    branch.shared(), "figures typed on the bank's page", false);
        }
        Part part = library.findRevision(partRevisionId).orElseThrow();
        PartDocument document = part.document();
        PartModel model = models.of(part);
        Double areaM2 = document.lengthM() == null || document.widthM() == null ? null : document.lengthM() * document.widthM();
        return new BranchInput(branch.label(), branch.count(), document.partNumber(), document.technology(), document.ratedVoltageV(),
                model.frozen(document), branch.mounting(), branch.shared(), model.source(), model.measured())
                .withEvidence(new BranchEvidence(model.samples(), model.measured() ? null : meaning(document), model.estimates()))
                .withSize(document.heightM(), areaM2, document.cost())
                .withRatings(PartStressRatings.of(document));
    }

    /** How the datasheet means the ESR that the model rests on. */
    private static EsrMeaning meaning(PartDocument document) {
        return PartModels.esrFigure(document).map(figure -> EsrMeaning.valueOf(figure.bound().name())).orElse(null);
    }
}
