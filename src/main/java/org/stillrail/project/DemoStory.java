package org.stillrail.project;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.DemoFiles;
import org.stillrail.account.DemoTeam;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.mounting.MountingGeometry;
import org.stillrail.electrical.requirement.RailFigures;

/** The demo's projects as its file tells them; the rooms above take their own chapters from it. */
public record DemoStory(String about, List<DemoProject> projects) {

    private static final int HOUR_OF_WORK = 9;

    public record DemoProject(
            String name, String purpose, List<String> members, String madeBy, LocalDate madeOn, List<DemoRail> rails) {
    }

    public record DemoRail(
            String name, String purpose, String author, LocalDate madeOn, RailFigures figures, List<DemoBank> banks) {
    }

    public record DemoBank(String name, String lesson, List<DemoRevision> revisions) {
    }

    /** @param distance null for a bank at one node */
    public record DemoRevision(
            int number, String author, LocalDate madeOn, String note, List<DemoBranch> branches, String state, List<DemoEvent> history, Distance distance) {
    }

    /**
     * @param node     null in a bank at one node
     * @param geometry that the mounting is estimated from, null where it is typed
     */
    public record DemoBranch(
            String label, int count, String partNumber, SeriesPath mounting, SeriesPath shared, Node node, MountingGeometry geometry) {
    }

    /** @param event SUBMITTED, RETURNED, APPROVED, SUPERSEDED or RECALLED */
    public record DemoEvent(String event, String by, LocalDate on, String comment, List<DemoConcession> concessions) {
    }

    public record DemoConcession(String verdict, String reason, String owner, LocalDate until) {
    }

    /** Reads the file. */
    public static DemoStory read() {
        return DemoFiles.json("projects.json", DemoStory.class);
    }

    public static CurrentPerson person(DemoTeam team, String userName) {
        return List.of(team.viewer(), team.engineer(), team.librarian(), team.reviewer(), team.administrator(), team.lead()).stream()
                .filter(person -> person.userName().equals(userName))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The demo has no '" + userName + "'"));
    }

    /** The story tells days; a record needs a time. */
    public static OffsetDateTime at(LocalDate day) {
        return day.atTime(HOUR_OF_WORK, 0).atOffset(ZoneOffset.UTC);
    }
}
