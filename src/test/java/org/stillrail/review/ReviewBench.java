package org.stillrail.review;

import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.context.ApplicationContext;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.transaction.support.TransactionTemplate;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.library.Library;
import org.stillrail.library.LossFigure;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.Part;
import org.stillrail.library.PartDocument;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.project.RailDocument;

/**
 * A project with a rail that allows 10 mV of ripple, and banks of one polymer capacitor for it: four of them stay well within
 * the limit, one alone does not. Everything is made by the steps that people take.
 */
final class ReviewBench {

    static final int ENOUGH = 4;
    static final int TOO_FEW = 1;

    private final Projects projects;
    private final Banks banks;
    private final CurrentPerson engineer;
    private final Part part;
    private final Project project;
    private final Rail rail;

    /** @param engineer starts the project and writes what is not said to be another's */
    ReviewBench(ApplicationContext context, CurrentPerson engineer, CurrentPerson... members) {
        this.projects = context.getBean(Projects.class);
        this.banks = context.getBean(Banks.class);
        this.engineer = engineer;
        String unique = UUID.randomUUID().toString().substring(0, 8);
        Library library = context.getBean(Library.class);
        this.part = as(engineer, () -> library.propose(polymer("POLY-" + unique), engineer));
        this.project = as(engineer, () -> projects.start("Project " + unique, "To be reviewed", engineer));
        for (CurrentPerson member : members) {
            as(engineer, () -> {
                projects.addMember(project.id(), projects.version(project.id()), member.id(), engineer);
                return null;
            });
        }
        this.rail = as(engineer, () -> projects.addRail(project.id(), "3V3", figures(0.010), engineer));
    }

    private static PartDocument polymer(String partNumber) {
        return new PartDocument(partNumber, "Invented Parts", Technology.POLYMER_ALUMINIUM, 100e-6, null, 16,
                List.of(new LossFigure(LossFigure.Kind.ESR, 0.005, 100e3, LossFigure.Bound.TYPICAL)), 0.2e-9, null,
                new PartDocument.RippleRating(4, 100e3, 105.0), null, 105.0, null,
                null, null, null, null, null, null, null, ModelChoice.DATASHEET, null, null, null);
    }

    private static RailDocument figures(double rippleV) {
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, 2.2e-6, 20, 0.01, 1, 500e3, 5, null, null);
        return new RailDocument("Feeds a test", new RailFigures(3.3, 5, InputRange.fixed(12), converter, new RippleLimit(rippleV, null), null,
                null, null, null, null, null));
    }

    UUID projectId() {
        return project.id();
    }

    Bank bank(int parts) {
        return as(engineer, () -> banks.add(rail.id(), "Bank " + UUID.randomUUID().toString().substring(0, 8), document(parts), engineer));
    }

    /** The next revision of a bank. */
    Bank revise(Bank bank, int parts, CurrentPerson author) {
        Bank now = banks.require(bank.id());
        return as(author, () -> banks.save(now.id(), now.version(), document(parts), author));
    }

    /** A newer revision of the rail, which makes its banks stale. */
    void reviseRail() {
        Rail now = projects.requireRail(rail.id());
        as(engineer, () -> projects.reviseRail(now.id(), now.version(), figures(0.009), engineer));
    }

    private BankDocument document(int parts) {
        return new BankDocument(projects.requireRail(rail.id()).revision().id(), null, List.of(new BranchDocument(
                "bulk", parts, part.id(), part.revision().id(), null, SeriesPath.NONE, SeriesPath.NONE)), null);
    }

    static <T> T as(CurrentPerson person, Supplier<T> work) {
        SecurityContextHolder.getContext().setAuthentication(
                new TestingAuthenticationToken(person, null, List.copyOf(person.getAuthorities())));
        try {
            return work.get();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    static <T> T inTransaction(ApplicationContext context, Supplier<T> work) {
        return context.getBean(TransactionTemplate.class).execute(status -> work.get());
    }
}
