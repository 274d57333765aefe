package org.stillrail.support;

import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.context.ApplicationContext;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
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
 * A project with one rail (3.3 V, 5 A, 500 kHz, 10 mV of ripple) and banks of one polymer capacitor, made by the steps that
 * people take: four of the capacitors keep the ripple, one alone does not.
 */
public final class TeamBench {

    private final Library library;
    private final Projects projects;
    private final Banks banks;
    private final CurrentPerson engineer;
    private final String unique = UUID.randomUUID().toString().substring(0, 8);
    private final Part part;
    private final Project project;
    private final Rail rail;

    public TeamBench(ApplicationContext context, CurrentPerson engineer) {
        this.library = context.getBean(Library.class);
        this.projects = context.getBean(Projects.class);
        this.banks = context.getBean(Banks.class);
        this.engineer = engineer;
        this.part = as(engineer, () -> library.propose(polymer("TEAM-" + unique, 0.005), engineer));
        this.project = as(engineer, () -> projects.start("Project " + unique, "To be tried", engineer));
        this.rail = addRail("3V3", figures(3.3, 5, 500e3, null));
    }

    public static PartDocument polymer(String partNumber, double esrOhm) {
        return new PartDocument(partNumber, "Invented Parts", Technology.POLYMER_ALUMINIUM, 100e-6, new PartDocument.Tolerance(20, 20), 16,
                List.of(new LossFigure(LossFigure.Kind.ESR, esrOhm, 100e3, LossFigure.Bound.TYPICAL)), 0.2e-9, null,
                new PartDocument.RippleRating(4, 100e3, 105.0), null, 105.0, null,
                null, null, 7.3e-3, 4.3e-3, 2.8e-3, null, null, ModelChoice.DATASHEET, null, null, null);
    }

    /** With what the list of a new team asks of such a part; a sweep, or a reason why there is none, is missing still. */
    public static PartDocument documented(PartDocument part) {
        return new PartDocument(part.partNumber(), part.maker(), part.technology(), part.capacitanceF(), part.tolerancePercent(),
                part.ratedVoltageV(), part.losses(), part.inductanceH(), null, part.rippleRating(), part.temperatureMinC(), part.temperatureMaxC(),
                null, null, null, part.lengthM(), part.widthM(), part.heightM(), null, new PartDocument.DatasheetReference("Sheet", null, null),
                ModelChoice.DATASHEET, null, null, null);
    }

    /** @param loadStep null for none */
    public static RailFigures figures(double outputV, double loadA, double switchingHz, LoadStep loadStep) {
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, 2.2e-6, 20, 0.01, 1, switchingHz, 5, null, null);
        return new RailFigures(outputV, loadA, InputRange.fixed(12), converter, new RippleLimit(0.010, null), null, loadStep, null, null,
                null, null);
    }

    public Rail addRail(String name, RailFigures figures) {
        return as(engineer, () -> projects.addRail(project.id(), name, new RailDocument("Feeds a test", figures), engineer));
    }

    public String unique() {
        return unique;
    }

    public Project project() {
        return project;
    }

    public Rail rail() {
        return projects.requireRail(rail.id());
    }

    /** As it stands now. */
    public Part part() {
        return library.find(part.id()).orElseThrow();
    }

    /** The next revision of the part, with another ESR. */
    public Part revisePart(double esrOhm) {
        Part now = part();
        return as(engineer, () -> library.revise(now.id(), now.version(), polymer(now.partNumber(), esrOhm), engineer));
    }

    public Bank addBank(int parts) {
        return addBank(rail(), parts);
    }

    public Bank addBank(Rail on, int parts) {
        return as(engineer, () -> banks.add(on.id(), "Bank " + UUID.randomUUID().toString().substring(0, 8), document(on, parts), engineer));
    }

    /** The next revision of a bank. */
    public Bank revise(Bank bank, int parts) {
        Bank now = banks.require(bank.id());
        return as(engineer, () -> banks.save(now.id(), now.version(), document(projects.requireRail(now.railId()), parts), engineer));
    }

    private BankDocument document(Rail on, int parts) {
        return new BankDocument(on.revision().id(), null, List.of(new BranchDocument(
                "bulk", parts, part.id(), part().revision().id(), null, SeriesPath.NONE, SeriesPath.NONE)), null);
    }

    /** Does something signed in as a person. */
    public static <T> T as(CurrentPerson person, Supplier<T> work) {
        SecurityContextHolder.getContext().setAuthentication(
                new TestingAuthenticationToken(person, null, List.copyOf(person.getAuthorities())));
        try {
            return work.get();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }
}
