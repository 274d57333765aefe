package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.StillrailApplication;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.Vetting;
import org.stillrail.review.ReviewRecord;
import org.stillrail.review.ReviewRecords;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestDatabase;
import org.stillrail.support.TestPeople;

/** Out of one installation (H2) and into another (PostgreSQL). */
@AppTest
class ProjectFileTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Library library;

    private TeamBench bench;

    private Bank approved() throws Exception {
        bench = new TeamBench(context, people.with(Role.ENGINEER));
        Bank bank = bench.addBank(4);
        String base = "/banks/" + bank.id() + "/revisions/1";
        mvc.perform(post(base + "/submit").with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().is3xxRedirection());
        String sha256 = jdbc.sql("select sha256 from review_snapshot where revision_id = :id").param("id", bank.revision().id())
                .query(String.class).single();
        mvc.perform(post(base + "/approve").param("sha256", sha256).param("password", TestPeople.PASSWORD).with(people.as(Role.REVIEWER)).with(csrf()))
                .andExpect(status().is3xxRedirection());
        return bank;
    }

    /** No bank of the project uses what replaces its part. */
    private Part replacePart() {
        CurrentPerson librarian = people.with(Role.LIBRARIAN);
        Part next = TeamBench.as(librarian, () -> library.propose(TeamBench.polymer("NEXT-" + bench.unique(), 0.006), librarian));
        TeamBench.as(librarian, () -> {
            library.changeVetting(bench.part().id(), bench.part().version(), Vetting.WITHDRAWN, "no longer made", next, librarian);
            return null;
        });
        return next;
    }

    private String export() throws Exception {
        return mvc.perform(get("/projects/" + bench.project().id() + "/export.json").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andReturn().getResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private String take(String file) throws Exception {
        return mvc.perform(multipart("/projects/import").file(new MockMultipartFile("file", "p.json", "application/json", file.getBytes(StandardCharsets.UTF_8)))
                .with(people.as(Role.ADMINISTRATOR)).with(csrf())).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
    }

    @Test
    void anotherInstallationReadsTheProjectWithItsSignatureAndGivesOutTheSame() throws Exception {
        Bank bank = approved();
        Part next = replacePart();
        String file = export();
        try (ConfigurableApplicationContext other = new SpringApplicationBuilder(StillrailApplication.class).run(
                "--spring.datasource.url=" + TestDatabase.emptyPostgresUrl(), "--server.port=0")) {
            CurrentPerson administrator = other.getBean(Accounts.class)
                    .add("admin", "Admin", Set.of(Role.ADMINISTRATOR), "four plain words here", "tests");
            ProjectFiles files = other.getBean(ProjectFiles.class);
            String tampered = file.replace("Feeds a test", "Feeds a text");
            assertThatThrownBy(() -> TeamBench.as(administrator, () -> files.read(tampered.getBytes(StandardCharsets.UTF_8), administrator)))
                    .isInstanceOf(ProjectFiles.ConflictException.class).hasMessageContaining("does not give its SHA-256");
            assertThat(other.getBean(Banks.class).find(bank.id())).isEmpty();

            TeamBench.as(administrator, () -> files.read(file.getBytes(StandardCharsets.UTF_8), administrator));
            Bank there = other.getBean(Banks.class).require(bank.id());
            assertThat(there.state()).isEqualTo(BankState.APPROVED);
            ReviewRecord review = other.getBean(ReviewRecords.class).of(there);
            assertThat(review.signatures()).singleElement().matches(ReviewRecord.Signed::holds);
            assertThat(review.snapshot().differences()).isEmpty();
            Part part = other.getBean(Library.class).find(bench.part().id()).orElseThrow();
            assertThat(part.vetting()).isEqualTo(Vetting.PROPOSED);
            assertThat(part.vettingNote()).isEqualTo("imported; it was withdrawn there; replaced by " + next.partNumber());
            assertThat(part.replacement().id()).isEqualTo(next.id());
            assertThatThrownBy(() -> TeamBench.as(administrator, () -> files.read(file.getBytes(StandardCharsets.UTF_8), administrator)))
                    .isInstanceOf(ProjectFiles.ConflictException.class).hasMessageContaining("here already");
        }
    }

    @Test
    void whatIsHereAlreadyOrNoProjectIsRefusedInWords() throws Exception {
        approved();
        assertThat(take(export())).contains("Nothing was stored", "This project is here already.");
        assertThat(take("{\"kind\":\"other\"}")).contains("Nothing was stored");
        assertThat(take("not json")).contains("Nothing was stored");
        assertThat(take(export().replace("\"review_step\":[", "\"no_such_table\":["))).contains("A project has no table");
        assertThat(take(export().replaceFirst("\"latest_number\":1", "\"latest_number\":\"x\""))).contains("holds something that is no whole");
    }
}
