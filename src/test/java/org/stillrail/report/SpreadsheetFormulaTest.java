package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
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
import org.stillrail.support.AppTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.NamedThings;
import org.stillrail.support.PageClient;
import org.stillrail.support.SiteMap;
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

    private static String hostile(int which) {
        return HOSTILE.get(which % HOSTILE.size()) + " " + UUID.randomUUID().toString().substring(0, 8);
    }

    @Test
    void noCellIsAFormula() throws Exception {
        CurrentPerson person = TestPeople.ofEveryRole(accounts, "=1+1");
        PageClient client = new PageClient(port).signIn(person.userName(), TestPeople.PASSWORD);
        List<String> first = new ArrayList<>(List.of("/library/bulk"));
        for (int i = 0; i < HOSTILE.size(); i++) {
            int which = i;
            first.addAll(NamedThings.store(context, person, k -> hostile(which + k)));
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
}
