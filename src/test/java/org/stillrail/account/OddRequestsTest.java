package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.support.DemoTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.PageClient;
import org.stillrail.support.SiteMap;
import org.stillrail.support.TestPeople;

/** Whatever stands in an address, the server says what is wrong with it and does not fail: no answer of 5xx, over HTTP. */
@DemoTest
class OddRequestsTest {

    private static final String UNKNOWN_ID = "00000000-0000-0000-0000-000000000000";
    private static final List<String> ODD_PIECES = List.of(UNKNOWN_ID, "not-an-id", "0", "-1", "99999999999999999999", "%F0%9F%92%A5", "a%22'%3Cb%3E", "%E2%80%AE");
    private static final List<String> ODD_VALUES = List.of("", " ", "-1", "0", "99999999999999999999", "1e999", "NaN", "-1e-320", "\"'<b>&", "%", "\\",
            "\0", "\r\nX-Y: z", "\uD83D\uDCA5", "\u202e", UNKNOWN_ID, "x".repeat(6000));

    private final Random random = new Random(20260101);

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Accounts accounts;

    @Autowired
    private JdbcClient jdbc;

    private PageClient everyone;

    @BeforeEach
    void signIn() throws Exception {
        CurrentPerson person = TestPeople.ofEveryRole(accounts, "Odd requests");
        jdbc.sql("insert into project_member (project_id, person_id) select id, :person from project").param("person", person.id()).update();
        everyone = new PageClient(port).signIn(person.userName(), TestPeople.PASSWORD);
    }

    private static String query(String name, String value) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8) + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    private void ask(String address, List<String> failures) throws Exception {
        int status = everyone.ask(address).status();
        // 503 is how a calculation says that it took too long.
        if (status >= 500 && status != 503) {
            failures.add(status + " " + address.substring(0, Math.min(300, address.length())));
        }
    }

    @Test
    void oddPiecesOfAPathAreNotFound() throws Exception {
        List<String> failures = new ArrayList<>();
        for (Endpoint endpoint : Endpoint.all(context)) {
            if (endpoint.hasVariables() && !endpoint.isApi()) {
                for (String piece : ODD_PIECES) {
                    String address = endpoint.pathWith(piece);
                    PageClient.Answer answer = everyone.ask(address);
                    if (!Set.of(400, 404, 405).contains(answer.status())) {
                        failures.add(answer.status() + " " + address);
                    }
                }
            }
        }
        assertThat(failures).isEmpty();
    }

    /** Every field that a page's forms put into an address, and a few that many pages know, all odd at once and each alone. */
    @Test
    void oddQueriesAreAnswered() throws Exception {
        List<Endpoint> endpoints = Endpoint.all(context);
        SiteMap map = SiteMap.of(everyone, endpoints, 1);
        assertThat(map.missing()).as("pages that no link leads to").doesNotContain("/rails/{railId}/edit", "/compare", "/scratch")
                .hasSizeLessThan(endpoints.size() / 8);
        List<String> failures = new ArrayList<>();
        for (Endpoint endpoint : endpoints) {
            for (String address : map.addresses(endpoint)) {
                Set<String> names = new TreeSet<>(map.fields(endpoint));
                names.addAll(List.of("page", "before", "from", "text", "q", "rail", "bank", "revision", "corner", "neighbour"));
                String path = address.replaceAll("\\?.*", "") + "?";
                String value = ODD_VALUES.get(random.nextInt(ODD_VALUES.size() - 1));
                ask(path + names.stream().map(name -> query(name, value)).collect(Collectors.joining("&")), failures);
                for (String name : names) {
                    ask(path + query(name, ODD_VALUES.get(random.nextInt(ODD_VALUES.size()))), failures);
                }
            }
        }
        assertThat(failures).isEmpty();
    }

    @Test
    void everyListTakesAnyPageNumber() throws Exception {
        for (String list : List.of("/library?page=", "/projects?page=")) {
            for (String page : List.of("0", "-1", "2147483647", "2147483648", "1.5", "x", "")) {
                assertThat(everyone.ask(list + page).status()).as(list + page).isEqualTo(200);
            }
        }
    }

    /** What no client library would send. */
    @ParameterizedTest
    @ValueSource(strings = {"/library?text=%zz", "/library?text=%", "/library?%00=%00", "/library?=&&==", "/library/parts/%zz", "/library/..;/people",
            "/library//parts", "/library;a=b", "/%2e%2e/%2e%2e/etc/passwd", "/library?text=a\u00e4b", "/css/../../application.yaml", "/js/%00.js"})
    void malformedAddressesAreRefusedOrAnswered(String target) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.getOutputStream().write(("GET " + target + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            assertThat(answer).matches("(?s)HTTP/1.1 (302|400|401|404) .*").doesNotContain("root:", "spring:", "at org.");
        }
    }
}
