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
import org.stillrail.support.TestPeople;

/** Markup in names and notes is escaped on every page that links lead to; what a browser makes of it is a journey's. */
@AppTest
class HostileMarkupTest {

    private static final String TAG = "<zz-hostile";

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Accounts accounts;

    @Test
    void noTagOfANameIsATagOfAPage() throws Exception {
        CurrentPerson person = TestPeople.ofEveryRole(accounts, "Person " + TAG + ">");
        PageClient client = new PageClient(port).signIn(person.userName(), TestPeople.PASSWORD);
        List<String> first = NamedThings.store(context, person,
                k -> "\"'></script></textarea>" + TAG + " " + UUID.randomUUID().toString().substring(0, 8) + ">");
        SiteMap map = SiteMap.of(client, Endpoint.all(context), 2, first.toArray(String[]::new));
        List<String> raw = new ArrayList<>();
        int escaped = 0;
        for (String address : map.ofType("text/html")) {
            String page = client.ask(address).text();
            if (page.contains(TAG)) {
                raw.add(address);
            }
            escaped += page.contains("&lt;zz-hostile") ? 1 : 0;
        }
        assertThat(raw).as("pages with an unescaped tag").isEmpty();
        assertThat(escaped).as("pages that show the names").isGreaterThan(10);
    }
}
