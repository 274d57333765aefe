package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.audit.AuditLines;
import org.stillrail.document.CanonicalJson;
import org.stillrail.support.AppTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.NamedThings;
import org.stillrail.support.PageClient;
import org.stillrail.support.SiteMap;
import org.stillrail.support.Spreadsheet;
import org.stillrail.support.TestPeople;

/**
 * A project whose file was made to do harm, taken in through its page: what no form here would let through stands in every field that no
 * hash covers, and what people may write in all others.
 */
@AppTest
class HostileProjectTest {

    private static final String TAG = "<zz-imported";

    /** Columns that hold what people write or are called and that no hash covers. */
    private static final Set<String> TEXTS = Set.of("author", "importer", "owner", "person", "created_by", "file_name", "maker", "vetting_reason",
            "purpose", "name", "part_number", "remark", "about", "reason", "finding");

    private static final int PROJECTS = 2;
    /** How many pages of a kind are opened. */
    private static final int EACH = 3;

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Accounts accounts;

    private PageClient client() throws Exception {
        CurrentPerson person = TestPeople.ofEveryRole(accounts, "Somebody");
        return new PageClient(port).signIn(person.userName(), TestPeople.PASSWORD);
    }

    /** Takes in what another installation gives out after {@code hostile} had its way with every text; the addresses of what came. */
    private List<String> takeIn(PageClient client, OtherInstallation other, UnaryOperator<String> hostile) throws Exception {
        List<String> first = new ArrayList<>(NamedThings.store(other.context(), other.administrator(), k -> hostile.apply("thing " + UUID.randomUUID())));
        UUID projectId = other.bean(JdbcClient.class).sql("select id from project order by created_at desc fetch first 1 rows only").query(UUID.class).single();
        review(other, projectId);
        ProjectFile file = OtherInstallation.received(other.export(projectId)).file();
        String spoiled = CanonicalJson.write(spoiled(file, hostile));
        byte[] bytes = spoiled.getBytes(StandardCharsets.UTF_8);

        client.get("/projects/import");
        String looked = client.post("/projects/import", Map.of(), "p.json", bytes).body();
        assertThat(looked).contains("What it brings").doesNotContain(TAG);
        String taken = client.post("/projects/import", Map.of("take", "yes", "seen", OtherInstallation.received(spoiled).sha256(),
                "name", hostile.apply("project " + UUID.randomUUID())), "p.json", bytes).body();
        assertThat(taken).contains("The project is taken in").doesNotContain(TAG);
        first.add("/projects/" + projectId);
        first.add("/projects/" + projectId + "/record?chain=" + other.bean(AuditLines.class).ownChain());
        return first;
    }

    /** Words of reviewers, which are in no hash. */
    private static void review(OtherInstallation other, UUID projectId) {
        JdbcClient jdbc = other.bean(JdbcClient.class);
        UUID revision = jdbc.sql("""
                select r.id from bank_revision r join bank b on b.id = r.subject_id join rail l on l.id = b.rail_id where l.project_id = :project""")
                .param("project", projectId).query(UUID.class).single();
        UUID part = jdbc.sql("select part_id from bank_part where revision_id = :revision").param("revision", revision).query(UUID.class).single();
        for (String insert : List.of("""
                insert into review_comment (id, revision_id, person_id, person, made_at, remark, about)
                select :id, r.id, :person, 'a', current_timestamp, 'b', 'c' from bank_revision r where r.id = :revision""", """
                insert into review_step (revision_id, number, step, person_id, person, taken_at, remark)
                select r.id, 1, 'SUBMITTED', :person, 'a', current_timestamp, 'b' from bank_revision r where r.id = :revision""", """
                insert into review_step (revision_id, number, step, person_id, person, taken_at, remark)
                select r.id, 2, 'RETURNED', :person, 'a', current_timestamp, 'b' from bank_revision r where r.id = :revision""", """
                insert into concession (revision_id, requirement, reason, owner_id, owner, ends_on)
                select r.id, 'LIFE', 'a', :person, 'b', date '2031-01-01' from bank_revision r where r.id = :revision""", """
                insert into part_exemption (id, part_id, item, reason, author_id, author, made_at)
                select :id, p.id, 'SWEEP', 'a', :person, 'b', current_timestamp from part p where p.id = :part""", """
                insert into finding_acceptance (id, sweep_id, kind, finding, reason, person_id, person, accepted_at)
                select :id, s.id, 'KRAMERS_KRONIG', 'a', 'b', :person, 'c', current_timestamp from sweep s where s.part_id = :part""",
                "update bank_revision_state set state = 'RETURNED' where revision_id = :revision")) {
            jdbc.sql(insert).param("id", UUID.randomUUID()).param("person", other.administrator().id()).param("revision", revision).param("part", part)
                    .update();
        }
    }

    private static ProjectFile spoiled(ProjectFile file, UnaryOperator<String> hostile) {
        file.tables().values().forEach(rows -> rows.forEach(row -> row.replaceAll(
                (column, cell) -> TEXTS.contains(column) && cell instanceof String text ? hostile.apply(text) : cell)));
        file.people().replaceAll((id, person) -> new ProjectFile.Person(hostile.apply(person.userName()), hostile.apply(person.displayName())));
        return file;
    }

    private SiteMap around(PageClient client, List<String> first) throws Exception {
        return SiteMap.of(client, Endpoint.all(context), EACH, first.toArray(String[]::new));
    }

    @Test
    void noTagOfAFileIsATagOfAPage() throws Exception {
        PageClient client = client();
        SiteMap map;
        try (OtherInstallation other = OtherInstallation.start()) {
            map = around(client, takeIn(client, other, text -> "\"'></script></textarea>" + TAG + " " + text + ">"));
        }
        List<String> raw = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        for (String address : map.ofType("text/html")) {
            String page = client.ask(address).text();
            if (page.contains(TAG)) {
                raw.add(address);
            }
            if (page.contains("&lt;zz-imported")) {
                shown.add(address.replaceAll("[?/][0-9a-f-]{36}.*", ""));
            }
        }
        assertThat(raw).as("pages with an unescaped tag").isEmpty();
        assertThat(shown).contains("/banks", "/rails", "/projects", "/library/parts", "/library/sweeps", "/library", "/people");
    }

    @Test
    void noCellOfATableIsAFormula() throws Exception {
        PageClient client = client();
        List<String> first = new ArrayList<>();
        try (OtherInstallation other = OtherInstallation.start()) {
            AtomicInteger which = new AtomicInteger();
            for (int i = 0; i < PROJECTS; i++) {
                first.addAll(takeIn(client, other, text -> Spreadsheet.HOSTILE.get(which.getAndIncrement() % Spreadsheet.HOSTILE.size()) + " " + text));
            }
        }
        List<String> tables = around(client, first).ofType("text/csv");
        assertThat(tables).anyMatch(each -> each.endsWith("/bom.csv"))
                .anyMatch(each -> each.matches("/library/sweeps/.*/export/csv.*")).anyMatch(each -> each.endsWith("/library/parts.csv"));
        for (String table : tables) {
            assertThat(Spreadsheet.formulas(client.get(table))).as(table).isEmpty();
        }
    }
}
