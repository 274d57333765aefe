package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
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
import org.stillrail.support.Spreadsheet;
import org.stillrail.support.TestPeople;

/** Whatever names people gave, no comma-separated text that leaves the program holds what a spreadsheet would run. */
@AppTest
class SpreadsheetFormulaTest {

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Accounts accounts;

    private static String hostile(int which) {
        return Spreadsheet.HOSTILE.get(which % Spreadsheet.HOSTILE.size()) + " " + UUID.randomUUID().toString().substring(0, 8);
    }

    @Test
    void noCellIsAFormula() throws Exception {
        CurrentPerson person = TestPeople.ofEveryRole(accounts, "=1+1");
        PageClient client = new PageClient(port).signIn(person.userName(), TestPeople.PASSWORD);
        List<String> first = new ArrayList<>(List.of("/library/bulk"));
        for (int i = 0; i < Spreadsheet.HOSTILE.size(); i++) {
            int which = i;
            first.addAll(NamedThings.store(context, person, k -> hostile(which + k)));
        }
        SiteMap map = SiteMap.of(client, Endpoint.all(context), 4 * Spreadsheet.HOSTILE.size(), first.toArray(String[]::new));
        List<String> tables = map.ofType("text/csv");
        assertThat(tables).anyMatch(each -> each.endsWith("/bom.csv")).anyMatch(each -> each.endsWith("/curves.csv"))
                .anyMatch(each -> each.endsWith("/library/parts.csv")).anyMatch(each -> each.matches("/library/parts/.*/export/csv.*"))
                .anyMatch(each -> each.matches("/library/sweeps/.*/export/csv.*")).anyMatch(each -> each.contains("/spread.csv"));
        List<String> formulas = new ArrayList<>();
        for (String table : tables) {
            Spreadsheet.formulas(client.get(table)).forEach(cell -> formulas.add(table + ": " + cell));
        }
        assertThat(formulas).isEmpty();
    }
}
