package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
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
import org.stillrail.support.AppTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.PageClient;
import org.stillrail.support.SiteMap;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

/** Whatever names people gave, no comma-separated text that leaves the program holds what a spreadsheet would run. */
@AppTest
class SpreadsheetFormulaTest {

    /** As cells begin where a spreadsheet splits at commas or semicolons. */
    private static final List<String> HOSTILE = List.of("=1+1", "+1+1|' /C x'!A0", "-1+1+cmd|' /C x'!A0", "@SUM(1+1)",
            "a,=1+1,+1+1,-1+1,@SUM(1+1)", "b;=1+1;+1+1;-1+1;@SUM(1+1)", "c\",=1+1", "d;\t=1+1");
    private static final Pattern FIGURE = Pattern.compile("-[\\d.]+(E-?\\d+)?( ?\\p{L}*)");

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Library library;

    @Autowired
    private Projects projects;

    @Autowired
    private Banks banks;

    private static String hostile(int which) {
        return HOSTILE.get(which % HOSTILE.size()) + " " + UUID.randomUUID().toString().substring(0, 8);
    }

    @Test
    void noCellIsAFormula() throws Exception {
        String name = "formulas-" + UUID.randomUUID().toString().substring(0, 8);
        CurrentPerson person = accounts.add(name, "=1+1", EnumSet.allOf(Role.class), TestPeople.PASSWORD, "tests");
        PageClient client = new PageClient(port).signIn(name, TestPeople.PASSWORD);
        List<String> first = new ArrayList<>(List.of("/library/bulk"));
        for (int i = 0; i < HOSTILE.size(); i++) {
            first.addAll(store(i, person));
        }
        SiteMap map = SiteMap.of(client, Endpoint.all(context), 4 * HOSTILE.size(), first.toArray(String[]::new));
        List<String> tables = map.ofType("text/csv");
        assertThat(tables).anyMatch(each -> each.endsWith("/bom.csv")).anyMatch(each -> each.endsWith("/curves.csv"))
                .anyMatch(each -> each.endsWith("/library/parts.csv")).anyMatch(each -> each.matches("/library/parts/.*/export/csv.*"))
                .anyMatch(each -> each.matches("/library/sweeps/.*/export/csv.*")).anyMatch(each -> each.contains("/spread.csv"));
        List<String> formulas = new ArrayList<>();
        for (String table : tables) {
            cells(client.get(table)).map(String::strip).filter(cell -> cell.matches("(?s)[=+\\-@].*") && !FIGURE.matcher(cell).matches())
                    .forEach(cell -> formulas.add(table + ": " + cell));
        }
        assertThat(formulas).isEmpty();
    }

    /** As a spreadsheet reads the text that splits at commas and heeds quotation marks, and as one that splits at semicolons and does not. */
    private static Stream<String> cells(String table) throws IOException {
        try (CSVParser parser = CSVParser.parse(table, CSVFormat.RFC4180)) {
            List<String> cells = parser.stream().flatMap(CSVRecord::stream).toList();
            return Stream.concat(cells.stream(), Stream.of(table.split("[;\\t\\r\\n]+")));
        }
    }

    /** Everything that a person can name, with hostile names; the addresses of its pages. */
    private List<String> store(int i, CurrentPerson person) {
        return TeamBench.as(person, () -> {
            PartDocument document = new PartDocument(hostile(i), hostile(i + 1), Technology.FILM, 1e-6, new PartDocument.Tolerance(10, 10), 63,
                    List.of(new LossFigure(LossFigure.Kind.ESR, 0.01, 100e3, LossFigure.Bound.MAXIMUM)), 5e-9, null, null, null, null, null, null,
                    hostile(i + 2), null, null, null, null, new PartDocument.DatasheetReference(hostile(i + 3), hostile(i), hostile(i + 1)),
                    ModelChoice.DATASHEET, null, hostile(i + 4));
            Part part = library.propose(document, person);
            SweepProvenance provenance = new SweepProvenance(hostile(i), hostile(i + 1), LocalDate.of(2031, 1, 1), hostile(i + 2), "impedance",
                    hostile(i + 3), hostile(i + 4), null, -5, -40, null, hostile(i + 5));
            SweepDocument sweep = new SweepDocument(provenance, "Touchstone 1", null, 50.0, List.of(), new double[] {1e3, 1e4, 1e5},
                    new double[] {0.01, 0.01, 0.01}, new double[] {-160, -16, -1.6}, null);
            UUID sweepId = library.importSweep(part.id(), hostile(i) + ".s1p", hostile(i).getBytes(StandardCharsets.UTF_8), sweep, person).id();
            Project project = projects.start(hostile(i), hostile(i + 1), person);
            Rail rail = projects.addRail(project.id(), hostile(i + 2), new RailDocument(hostile(i + 3), TeamBench.figures(3.3, 5, 500e3, null)), person);
            BankDocument bank = new BankDocument(rail.revision().id(), null, List.of(new BranchDocument(hostile(i), 2, part.id(),
                    part.revision().id(), null, SeriesPath.NONE, SeriesPath.NONE)), hostile(i + 1));
            Bank saved = banks.add(rail.id(), hostile(i + 4), bank, person);
            return List.of("/library/parts/" + part.id(), "/library/sweeps/" + sweepId, "/banks/" + saved.id(),
                    "/banks/" + saved.id() + "/revisions/1/spread");
        });
    }
}
