package org.stillrail.support;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.function.IntFunction;
import org.springframework.context.ApplicationContext;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.library.Library;
import org.stillrail.library.LossFigure;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.Part;
import org.stillrail.library.PartDocument;
import org.stillrail.library.SweepDocument;
import org.stillrail.library.SweepProvenance;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.project.RailDocument;

/** A part, a sweep, a project, a rail and a bank, with a text of one's own wherever a person may write one. */
public final class NamedThings {

    private NamedThings() {
    }

    /**
     * Stores them.
     *
     * @param text a text that nobody has used yet, of as many kinds as there are numbers
     * @return addresses of their pages
     */
    public static List<String> store(ApplicationContext context, CurrentPerson person, IntFunction<String> text) {
        Library library = context.getBean(Library.class);
        Projects projects = context.getBean(Projects.class);
        Banks banks = context.getBean(Banks.class);
        return TeamBench.as(person, () -> {
            PartDocument document = new PartDocument(text.apply(0), text.apply(1), Technology.FILM, 1e-6, new PartDocument.Tolerance(10, 10), 63,
                    List.of(new LossFigure(LossFigure.Kind.ESR, 0.01, 100e3, LossFigure.Bound.MAXIMUM)), 5e-9, null, null, null, null, null, null,
                    text.apply(2), null, null, null, null, new PartDocument.DatasheetReference(text.apply(3), text.apply(0), text.apply(1)),
                    ModelChoice.DATASHEET, null, text.apply(4), null);
            Part part = library.propose(document, person);
            SweepProvenance provenance = new SweepProvenance(text.apply(0), text.apply(1), LocalDate.of(2031, 1, 1), text.apply(2), "impedance",
                    text.apply(3), text.apply(4), null, -5, -40, null, text.apply(5));
            SweepDocument sweep = new SweepDocument(provenance, "Touchstone 1", null, 50.0, List.of(), new double[] {1e3, 1e4, 1e5},
                    new double[] {0.01, 0.01, 0.01}, new double[] {-160, -16, -1.6}, null);
            UUID sweepId = library.importSweep(part.id(), text.apply(0) + ".s1p", text.apply(0).getBytes(StandardCharsets.UTF_8), sweep, person).id();
            Project project = projects.start(text.apply(0), text.apply(1), person);
            Rail rail = projects.addRail(project.id(), text.apply(2), new RailDocument(text.apply(3), TeamBench.figures(3.3, 5, 500e3, null)), person);
            BankDocument bank = new BankDocument(rail.revision().id(), null, List.of(new BranchDocument(text.apply(0), 2, part.id(),
                    part.revision().id(), null, SeriesPath.NONE, SeriesPath.NONE)), text.apply(1));
            Bank saved = banks.add(rail.id(), text.apply(4), bank, person);
            return List.of("/library/parts/" + part.id(), "/library/sweeps/" + sweepId, "/banks/" + saved.id(),
                    "/banks/" + saved.id() + "/revisions/1/spread");
        });
    }
}
