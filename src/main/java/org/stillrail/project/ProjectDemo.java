package org.stillrail.project;

import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.DemoChapter;
import org.stillrail.account.DemoTeam;

/** The demo's projects, their members and their rails. */
@Component
@Order(200)
class ProjectDemo implements DemoChapter {

    private final ProjectRows projects;
    private final RailRows rails;

    ProjectDemo(ProjectRows projects, RailRows rails) {
        this.projects = projects;
        this.rails = rails;
    }

    @Override
    public void write(DemoTeam team) {
        for (DemoStory.DemoProject demo : DemoStory.read().projects()) {
            CurrentPerson maker = DemoStory.person(team, demo.madeBy());
            Project project = new Project(UUID.randomUUID(), demo.name(), demo.purpose(), maker.displayName(), DemoStory.at(demo.madeOn()));
            projects.insert(project);
            demo.members().forEach(member -> projects.addMember(project.id(), DemoStory.person(team, member).id()));
            for (DemoStory.DemoRail rail : demo.rails()) {
                rails.insert(project.id(), rail.name(), new RailDocument(rail.purpose(), rail.figures()),
                        DemoStory.person(team, rail.author()), DemoStory.at(rail.madeOn()));
            }
        }
    }
}
