package org.stillrail.bank;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.DemoChapter;
import org.stillrail.account.DemoTeam;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.project.DemoStory;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;

/** The demo's banks, every revision in work; the room of reviews tells how they went on. */
@Component
@Order(300)
class BankDemo implements DemoChapter {

    private final BankRows banks;
    private final Projects projects;
    private final Library library;

    BankDemo(BankRows banks, Projects projects, Library library) {
        this.banks = banks;
        this.projects = projects;
        this.library = library;
    }

    @Override
    public void write(DemoTeam team) {
        for (DemoStory.DemoProject demo : DemoStory.read().projects()) {
            Project project = projects.all().stream().filter(each -> each.name().equals(demo.name())).findFirst().orElseThrow();
            for (DemoStory.DemoRail demoRail : demo.rails()) {
                Rail rail = projects.railsOf(project.id()).stream().filter(each -> each.name().equals(demoRail.name())).findFirst().orElseThrow();
                demoRail.banks().forEach(bank -> write(bank, rail, team));
            }
        }
    }

    private void write(DemoStory.DemoBank demo, Rail rail, DemoTeam team) {
        Bank bank = null;
        for (DemoStory.DemoRevision revision : demo.revisions()) {
            List<BranchDocument> branches = revision.branches().stream().map(this::branch).toList();
            BankDocument document = new BankDocument(rail.revision().id(), null, branches, revision.note(), revision.distance());
            CurrentPerson author = DemoStory.person(team, revision.author());
            if (bank == null) {
                bank = banks.insert(rail.id(), demo.name(), document, author, DemoStory.at(revision.madeOn()));
            } else {
                banks.addRevision(bank, document, author, DemoStory.at(revision.madeOn()));
                bank = banks.find(bank.id()).orElseThrow();
            }
        }
    }

    private BranchDocument branch(DemoStory.DemoBranch demo) {
        Part part = library.find(demo.partNumber()).orElseThrow(() -> new IllegalStateException("No part " + demo.partNumber()));
        return new BranchDocument(demo.label(), demo.count(), part.id(), part.revision().id(), null, demo.mounting(), demo.shared())
                .placed(demo.node(), demo.geometry() == null ? null : MountingOrigin.estimated(demo.geometry()));
    }
}
