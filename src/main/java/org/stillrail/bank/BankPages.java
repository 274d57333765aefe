package org.stillrail.bank;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.library.Library;
import org.stillrail.library.PartChoice;
import org.stillrail.project.Projects;
import org.stillrail.web.Form;

/** Puts into the model what the bank page, its preview and its cards share. */
@Component
class BankPages {

    /** The field that names the stored revision which a page shows. */
    static final String REVISION = "revision";

    private final Library library;
    private final Projects projects;
    private final Banks banks;
    private final BankInputs inputs;

    BankPages(Library library, Projects projects, Banks banks, BankInputs inputs) {
        this.library = library;
        this.projects = projects;
        this.banks = banks;
        this.inputs = inputs;
    }

    /** The figures of a document; where the physics refuses it, a sentence and no figures. */
    void figures(BankDocument document, Form form, Model model) {
        figures(document, form, model, Evaluation::evaluate);
    }

    /** Only what the pictures need; what is said of the bank at all its corners comes with a second request. */
    void pictures(BankDocument document, Form form, Model model) {
        figures(document, form, model, Evaluation::picturesOnly);
    }

    private void figures(
            BankDocument document, Form form, Model model, BiFunction<EvaluationInput, String, Evaluation> evaluate) {
        try {
            Evaluation evaluation = evaluate.apply(input(document, form, model), form.get("corner"));
            model.addAttribute(BankPanel.EVALUATION, evaluation);
            model.addAttribute("view", BankView.of(evaluation, neighbour(form).orElse(null)));
        } catch (IllegalArgumentException e) {
            form.errors().add("", e.getMessage() + ".");
        }
    }

    /**
     * While the page shows a stored revision as it is, that of its record: once submitted, what was frozen then, whatever the library says by
     * now. With anything changed, the library of today.
     */
    private EvaluationInput input(BankDocument document, Form form, Model model) {
        UUID revisionId = form.isBlank(REVISION) ? null : form.read(REVISION, "Revision", true, UUID::fromString);
        Optional<Bank> unchanged = Optional.ofNullable(revisionId).map(banks::requireRevision).filter(bank -> bank.document().equals(document));
        if (unchanged.isEmpty()) {
            return inputs.of(document);
        }
        RecordedInput recorded = inputs.ofRecord(unchanged.get());
        model.addAttribute("frozen", recorded.frozen());
        return recorded.input();
    }

    /** The branch cards with the parts that stand in them, by id. */
    void cards(Form form, Model model) {
        Map<String, PartChoice> parts = new HashMap<>();
        library.chosen(chosen(form)).forEach(part -> parts.put(part.id().toString(), part));
        model.addAttribute("parts", parts);
        model.addAttribute("typedHere", PartField.TYPED_HERE);
        places(form, model);
        form(form, model);
    }

    /** What the cards say of mounting and distance. */
    void places(Form form, Model model) {
        List<Integer> indices = BankForm.indices(form);
        DistanceForm.placeAll(form, indices);
        model.addAttribute("indices", indices);
        model.addAttribute("paths", DistanceForm.paths());
        model.addAttribute("nodes", DistanceForm.nodes());
        model.addAttribute("mountings", MountingForm.origins());
        model.addAttribute("shorts", library.shortedFixtures());
        Map<Integer, MountingForm.Offer> offers = new HashMap<>();
        for (int i : indices) {
            MountingForm.Offer offer = new MountingForm(form, "b" + i + ".", "Branch " + (indices.indexOf(i) + 1) + ": ").offer(library);
            if (offer != null) {
                offers.put(i, offer);
            }
        }
        model.addAttribute("offers", offers);
    }

    private static Set<UUID> chosen(Form form) {
        Set<UUID> chosen = new HashSet<>();
        for (int i : BankForm.indices(form)) {
            try {
                chosen.add(UUID.fromString(form.get("b" + i + ".part")));
            } catch (IllegalArgumentException e) {
                // Figures typed here, or nothing that is a part.
            }
        }
        return chosen;
    }

    void form(Form form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
    }

    /** Banks of the same rail that may stand faint behind the charts. */
    void neighbours(UUID railId, UUID bankId, Model model) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "none");
        if (railId != null) {
            banks.ofRail(railId).stream()
                    .filter(other -> !other.id().equals(bankId))
                    .forEach(other -> choices.put(other.revision().id().toString(), other.name() + " (" + other.state().label() + ")"));
        }
        model.addAttribute("neighbours", choices);
    }

    private Optional<Evaluation> neighbour(Form form) {
        if (form.isBlank("neighbour")) {
            return Optional.empty();
        }
        UUID revisionId = form.read("neighbour", "Neighbour", true, UUID::fromString);
        return revisionId == null ? Optional.empty()
                : Optional.of(Evaluation.evaluate(inputs.ofRecord(banks.requireRevision(revisionId)).input()));
    }

    /** The revision of the rail that a form was opened for, or null for a scratch bank. */
    UUID railRevision(Form form) {
        if (form.isBlank("railRevision")) {
            return null;
        }
        UUID revisionId = form.read("railRevision", "Rail", true, UUID::fromString);
        return revisionId == null ? null : projects.requireRailRevision(revisionId).revision().id();
    }
}
