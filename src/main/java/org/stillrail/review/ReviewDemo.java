package org.stillrail.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.DemoChapter;
import org.stillrail.account.DemoTeam;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankInputs;
import org.stillrail.bank.Banks;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.project.DemoStory;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;

/** How the demo's banks went through review: the story's steps on the story's days, by the rules that hold for everyone. */
@Component
@Order(400)
class ReviewDemo implements DemoChapter {

    private final Projects projects;
    private final Banks banks;
    private final BankInputs inputs;
    private final ReviewWriter writer;
    private final Snapshots snapshots;

    ReviewDemo(Projects projects, Banks banks, BankInputs inputs, ReviewWriter writer, Snapshots snapshots) {
        this.projects = projects;
        this.banks = banks;
        this.inputs = inputs;
        this.writer = writer;
        this.snapshots = snapshots;
    }

    private record Told(Bank bank, DemoStory.DemoRevision revision) {
    }

    private record Event(Told of, DemoStory.DemoEvent event) {
    }

    @Override
    public void write(DemoTeam team) {
        List<Told> told = told();
        Map<UUID, Evaluation> evaluations = evaluations(told);
        told.stream()
                .flatMap(each -> each.revision().history().stream().map(event -> new Event(each, event)))
                .sorted(Comparator.comparing(each -> each.event().on()))
                .forEach(each -> replay(each, evaluations, team));
        told.forEach(this::requireEnd);
    }

    private List<Told> told() {
        List<Told> told = new ArrayList<>();
        Map<String, Rail> rails = projects.all().stream().flatMap(project -> projects.railsOf(project.id()).stream())
                .collect(Collectors.toMap(rail -> projects.require(rail.projectId()).name() + "/" + rail.name(), rail -> rail));
        for (DemoStory.DemoProject project : DemoStory.read().projects()) {
            for (DemoStory.DemoRail rail : project.rails()) {
                Map<String, Bank> ofRail = banks.ofRail(rails.get(project.name() + "/" + rail.name()).id()).stream()
                        .collect(Collectors.toMap(Bank::name, bank -> bank));
                rail.banks().forEach(bank -> bank.revisions().forEach(
                        revision -> told.add(new Told(banks.require(ofRail.get(bank.name()).id(), revision.number()), revision))));
            }
        }
        return told;
    }

    /** Of all that was submitted. The inputs are read one after the other, because they are read in this transaction. */
    private Map<UUID, Evaluation> evaluations(List<Told> told) {
        Map<UUID, EvaluationInput> frozen = new HashMap<>();
        told.stream().filter(each -> !each.revision().history().isEmpty())
                .forEach(each -> frozen.put(each.bank().revision().id(), inputs.of(each.bank().document())));
        return frozen.entrySet().parallelStream()
                .collect(Collectors.toConcurrentMap(Map.Entry::getKey, entry -> Evaluation.evaluate(entry.getValue())));
    }

    private void replay(Event each, Map<UUID, Evaluation> evaluations, DemoTeam team) {
        DemoStory.DemoEvent event = each.event();
        UUID revisionId = each.of().bank().revision().id();
        CurrentPerson person = DemoStory.person(team, event.by());
        switch (ReviewStep.valueOf(event.event())) {
            case SUBMITTED -> writer.freeze(banks.requireRevision(revisionId), evaluations.get(revisionId), concessions(event, team),
                    event.comment(), person, DemoStory.at(event.on()));
            case RETURNED -> writer.giveBack(revisionId, event.comment(), person, DemoStory.at(event.on()));
            case APPROVED -> writer.approve(revisionId, snapshots.ofRevision(revisionId).orElseThrow().sha256(), event.comment(), person,
                    DemoStory.at(event.on()));
            case RECALLED -> writer.recall(revisionId, event.comment(), person, DemoStory.at(event.on()));
            case SUPERSEDED -> {
                // Follows from the approval of the newer revision.
            }
        }
    }

    private static List<Concession> concessions(DemoStory.DemoEvent event, DemoTeam team) {
        return Objects.requireNonNullElse(event.concessions(), List.<DemoStory.DemoConcession>of()).stream()
                .map(told -> {
                    CurrentPerson owner = DemoStory.person(team, told.owner());
                    return new Concession(Requirement.valueOf(told.verdict()), told.reason(), owner.id(), owner.displayName(), told.until());
                })
                .toList();
    }

    private void requireEnd(Told told) {
        String state = banks.requireRevision(told.bank().revision().id()).state().name();
        if (!state.equals(told.revision().state())) {
            throw new IllegalStateException("The demo tells of " + told.bank().name() + " revision " + told.revision().number() + " as "
                    + told.revision().state() + ", but its steps end at " + state);
        }
    }
}
