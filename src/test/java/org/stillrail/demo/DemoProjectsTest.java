package org.stillrail.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.RailFigures;
import tools.jackson.databind.JsonNode;

/** The story of the demo is one that the product allows: who writes, who signs, which state follows. */
class DemoProjectsTest {

    private static final JsonNode STORY = DemoFile.read("projects.json");

    /** What the last event of a history makes of a revision; without any event it is in work. */
    private static final Map<String, String> STATE_AFTER = Map.of(
            "SUBMITTED", "IN_REVIEW", "RETURNED", "RETURNED", "APPROVED", "APPROVED",
            "SUPERSEDED", "SUPERSEDED", "RECALLED", "RECALLED");

    /** Roles of the demo accounts that write and that sign. */
    private static final Set<String> ENGINEERS = Set.of("engineer", "lead");
    private static final Set<String> REVIEWERS = Set.of("reviewer", "lead");

    @Test
    void everyRailAsksForAllFiguresAndCitesEachLimit() {
        assertThat(projects()).hasSize(3);
        assertThat(projects().flatMap(project -> list(project, "rails"))).hasSize(9).allSatisfy(rail -> {
            RailFigures figures = DemoFile.as(rail.get("figures"), RailFigures.class);
            ControlFigures control = figures.converter().control();
            if (control != null && control.crossoverHz() != null) {
                assertThat(control.crossoverHz()).isLessThanOrEqualTo(figures.converter().switchingHz() / 5);
            }
            assertThat(figures.input().minimumV()).isGreaterThan(figures.nominalVoltageV());
            assertThat(List.of(figures.ripple().citation(), figures.window().citation(), figures.loadStep().citation(),
                    figures.ambient().citation(), figures.life().citation(), figures.space().citation()))
                    .allSatisfy(citation -> assertThat(citation.clause()).isNotBlank());
        });
    }

    @Test
    void branchesUsePartsOfTheLibrary() {
        List<String> known = DemoFile.read("library", "parts.json").valueStream()
                .map(entry -> entry.get("part").get("partNumber").stringValue()).toList();
        assertThat(revisions().flatMap(revision -> list(revision, "branches"))).isNotEmpty().allSatisfy(branch -> {
            assertThat(known).contains(branch.get("partNumber").stringValue());
            assertThat(branch.get("count").intValue()).isPositive();
        });
    }

    @Test
    void membersWriteAndSomebodyElseSigns() {
        projects().forEach(project -> {
            List<String> members = list(project, "members").map(JsonNode::stringValue).toList();
            assertThat(ENGINEERS).containsAll(members);
            banks(project).flatMap(bank -> list(bank, "revisions")).forEach(revision -> {
                String author = revision.get("author").stringValue();
                assertThat(members).contains(author);
                assertThat(list(revision, "history")).allSatisfy(event -> {
                    String by = event.get("by").stringValue();
                    if (event.get("event").stringValue().equals("SUBMITTED")) {
                        assertThat(by).isEqualTo(author);
                    } else {
                        assertThat(REVIEWERS).contains(by);
                        assertThat(by).isNotEqualTo(author);
                    }
                });
            });
        });
    }

    @Test
    void historyRunsForwardAndEndsInTheState() {
        assertThat(revisions()).isNotEmpty().allSatisfy(revision -> {
            List<JsonNode> history = list(revision, "history").toList();
            String last = history.isEmpty() ? null : history.get(history.size() - 1).get("event").stringValue();
            assertThat(revision.get("state").stringValue()).isEqualTo(last == null ? "IN_WORK" : STATE_AFTER.get(last));
            assertThat(Stream.concat(Stream.of(revision.get("madeOn")), history.stream().map(event -> event.get("on")))
                    .map(day -> LocalDate.parse(day.stringValue())).toList()).isSorted();
        });
    }

    @Test
    void everyStateAndAConcessionOccur() {
        assertThat(revisions().map(revision -> revision.get("state").stringValue()).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder("IN_WORK", "IN_REVIEW", "RETURNED", "APPROVED", "SUPERSEDED", "RECALLED");
        assertThat(revisions().filter(revision -> revision.get("state").stringValue().equals("APPROVED"))
                .flatMap(revision -> list(revision, "history"))
                .anyMatch(event -> event.has("concessions"))).isTrue();
    }

    private static Stream<JsonNode> projects() {
        return list(STORY, "projects");
    }

    private static Stream<JsonNode> banks(JsonNode project) {
        return list(project, "rails").flatMap(rail -> list(rail, "banks"));
    }

    private static Stream<JsonNode> revisions() {
        return projects().flatMap(DemoProjectsTest::banks).flatMap(bank -> list(bank, "revisions"));
    }

    private static Stream<JsonNode> list(JsonNode node, String member) {
        return node.get(member).valueStream();
    }
}
