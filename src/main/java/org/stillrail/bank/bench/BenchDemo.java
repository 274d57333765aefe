package org.stillrail.bank.bench;

import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.DemoChapter;
import org.stillrail.account.DemoFiles;
import org.stillrail.account.DemoTeam;
import org.stillrail.bank.Bank;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BenchKind;
import org.stillrail.library.SweepIntake;
import org.stillrail.project.DemoStory;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.web.Form;

/** What the demo's team measured on its board, brought in by the same fields as on the page. */
@Component
@Order(310)
class BenchDemo implements DemoChapter {

    private static final String FOLDER = "bench/";

    private final Bench bench;
    private final Banks banks;
    private final Projects projects;
    private final SweepIntake intake;

    BenchDemo(Bench bench, Banks banks, Projects projects, SweepIntake intake) {
        this.bench = bench;
        this.banks = banks;
        this.projects = projects;
        this.intake = intake;
    }

    /** @param fields of the bench page, as typed */
    private record DemoRecord(String rail, String bank, int revision, String by, String file, Map<String, String> fields) {
    }

    @Override
    public void write(DemoTeam team) {
        for (DemoRecord demo : DemoFiles.json(FOLDER + "records.json", DemoRecord[].class)) {
            CurrentPerson person = DemoStory.person(team, demo.by());
            team.as(person, () -> attach(demo, person));
        }
    }

    private void attach(DemoRecord demo, CurrentPerson person) {
        Form form = Form.empty();
        demo.fields().forEach(form::with);
        SweepIntake.SentFile file = new SweepIntake.SentFile(demo.file(), DemoFiles.bytes(FOLDER + demo.file()));
        BenchKind kind = BenchForm.kind(form);
        BenchDocument document = kind == null ? null : BenchForm.read(kind, file, form, intake);
        if (document == null) {
            throw new IllegalStateException(demo.file() + ": " + form.errors().all());
        }
        bench.attach(bank(demo), kind, file, document, person);
    }

    private Bank bank(DemoRecord demo) {
        Rail rail = projects.all().stream().flatMap(project -> projects.railsOf(project.id()).stream())
                .filter(each -> each.name().equals(demo.rail())).findFirst().orElseThrow();
        Bank bank = banks.ofRail(rail.id()).stream().filter(each -> each.name().equals(demo.bank())).findFirst().orElseThrow();
        return banks.require(bank.id(), demo.revision());
    }
}
