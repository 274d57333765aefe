package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.support.Endpoint;
import org.stillrail.support.NamedThings;
import org.stillrail.support.PageClient;
import org.stillrail.support.SiteMap;
import org.stillrail.support.TestPeople;

/** Names without a place to break them make no page wider than its window. */
@Browsing
@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:long;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
        + ";LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1")
class LongNamesJourney {

    private static final int WINDOW_PX = 1280;
    private static final int LENGTH = 300;
    private static final int EACH = 2;

    /** Null, or how wide the page is and the innermost elements that reach out of it; what scrolls in a box of its own does not. */
    private static final String WIDEST = """
            () => {
              const width = document.documentElement.scrollWidth;
              const limit = document.documentElement.clientWidth;
              if (width <= limit) {
                return null;
              }
              const out = [...document.querySelectorAll('body *')].filter(each => each.getBoundingClientRect().right > limit + 1);
              return width + ' px: ' + out.filter(each => !out.some(other => other !== each && each.contains(other))).slice(0, 4)
                .map(each => each.parentElement.outerHTML.slice(0, 60)).join(' | ');
            }""";

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext context;

    private static String name(int kind) {
        return "W".repeat(LENGTH) + UUID.randomUUID().toString().replace("-", "") + kind;
    }

    @Test
    void noPageIsWiderThanItsWindow(Visitor visitor) throws Exception {
        CurrentPerson person = TestPeople.ofEveryRole(context.getBean(Accounts.class), name(9));
        PageClient client = new PageClient(port).signIn(person.userName(), TestPeople.PASSWORD);
        List<String> first = new ArrayList<>(NamedThings.store(context, person, LongNamesJourney::name));
        String bank = first.stream().filter(address -> address.matches("/banks/[^/]*")).findFirst().orElseThrow();
        client.get(bank);
        client.post(bank + "/revisions/1/comments", Map.of("commentRemark", name(8)));
        SiteMap map = SiteMap.of(client, Endpoint.all(context), EACH, first.toArray(String[]::new));

        visitor.open("/sign-in");
        visitor.fill("User name", person.userName());
        visitor.fill("Password", TestPeople.PASSWORD);
        visitor.press("Sign in");
        visitor.rests();
        Map<String, Object> wide = new TreeMap<>();
        for (String address : map.ofType("text/html")) {
            visitor.open(address);
            visitor.rests();
            Object widest = visitor.page().evaluate(WIDEST);
            if (widest != null) {
                wide.put(address, widest);
            }
        }
        assertThat(map.ofType("text/html")).hasSizeGreaterThan(30).anyMatch(address -> address.contains("/spread"));
        assertThat(wide).as("pages wider than " + WINDOW_PX + " px").isEmpty();
    }
}
