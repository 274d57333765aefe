package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.audit.AuditLines;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.SweepDocument;
import org.stillrail.library.SweepProvenance;
import org.stillrail.library.Vetting;
import org.stillrail.project.NameTakenException;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.project.RailDocument;
import org.stillrail.review.ReviewRecord;
import org.stillrail.review.ReviewRecords;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;
import org.stillrail.team.VettingItem;

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

    private String export(UUID projectId) throws Exception {
        return mvc.perform(get("/projects/" + projectId + "/export.json").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andReturn().getResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private String export() throws Exception {
        return export(bench.project().id());
    }

    private String look(String file) throws Exception {
        return mvc.perform(multipart("/projects/import").file(upload(file)).with(people.as(Role.ADMINISTRATOR)).with(csrf()))
                .andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
    }

    private static MockMultipartFile upload(String file) {
        return new MockMultipartFile("file", "p.json", "application/json", file.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void anotherInstallationReadsTheProjectWithItsSignatureAndGivesOutTheSame() throws Exception {
        Bank bank = approved();
        Part next = replacePart();
        String file = export();
        try (OtherInstallation other = OtherInstallation.start()) {
            String tampered = file.replace("Feeds a test", "Feeds a text");
            assertThat(other.look(tampered).conflicts()).singleElement().asString().contains("does not give its SHA-256");
            assertThatThrownBy(() -> other.take(tampered, "A name"))
                    .isInstanceOf(ProjectFiles.ConflictException.class).hasMessageContaining("does not give its SHA-256");
            assertThat(other.look(file).conflicts()).isEmpty();
            assertThat(other.bean(Banks.class).find(bank.id())).as("a look stores nothing").isEmpty();

            UUID projectId = other.take(file, bench.project().name());
            Bank there = other.bean(Banks.class).require(bank.id());
            assertThat(there.state()).isEqualTo(BankState.APPROVED);
            ReviewRecord review = other.bean(ReviewRecords.class).of(there);
            assertThat(review.signatures()).singleElement().matches(ReviewRecord.Signed::holds);
            assertThat(review.snapshot().differences()).isEmpty();
            Part part = other.bean(Library.class).find(bench.part().id()).orElseThrow();
            assertThat(part.vetting()).isEqualTo(Vetting.PROPOSED);
            assertThat(part.vettingNote()).isEqualTo("imported; it was withdrawn there; replaced by " + next.partNumber());
            assertThat(part.replacement().id()).isEqualTo(next.id());
            assertThat(other.look(file).conflicts()).containsExactly("This project is here already.");
            assertThat(OtherInstallation.received(other.bean(ProjectFiles.class).write(projectId)).file().rows(ProjectTable.REVIEW_SIGNATURE))
                    .isEqualTo(OtherInstallation.received(file).file().rows(ProjectTable.REVIEW_SIGNATURE)).hasSize(1);
        }
    }

    /** A project at home that uses the same part, each time at its newest revision. */
    private Project another() {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        return TeamBench.as(engineer, () -> {
            Project project = context.getBean(Projects.class).start("Next " + UUID.randomUUID(), "Uses the part again", engineer);
            Rail rail = context.getBean(Projects.class).addRail(project.id(), "3V3",
                    new RailDocument("Feeds a test", TeamBench.figures(3.3, 5, 500e3, null)), engineer);
            context.getBean(Banks.class).add(rail.id(), "Bank", new BankDocument(rail.revision().id(), null, List.of(new BranchDocument("bulk", 4,
                    bench.part().id(), bench.part().revision().id(), null, SeriesPath.NONE, SeriesPath.NONE)), null), engineer);
            return project;
        });
    }

    @Test
    void aPartThatIsHereGainsTheRevisionsThatFollowAndIsProposedAgain() throws Exception {
        Bank bank = approved();
        UUID partId = bench.part().id();
        try (OtherInstallation other = OtherInstallation.start()) {
            other.take(export(), "First");
            other.bean(JdbcClient.class).sql("update part set vetting = 'VETTED', vetting_reason = null").update();
            bench.revisePart(0.006);
            bench.revisePart(0.007);
            String file = export(another().id());
            String partNumber = bench.part().partNumber();
            assertThat(other.look(file).notes()).anySatisfy(note -> assertThat(note).contains("Part '" + partNumber + "' gains revisions 2 to 3",
                    "revision 3 becomes the newest here", "vetted here at revision 1, is proposed again", "One bank here that uses it"));
            other.take(file, "Second");
            Part there = other.bean(Library.class).find(partId).orElseThrow();
            assertThat(there.latestNumber()).isEqualTo(3);
            assertThat(there.revision()).isEqualTo(bench.part().revision());
            assertThat(there.vetting()).isEqualTo(Vetting.PROPOSED);
            assertThat(there.vettingReason()).contains("revision 3 came with a project from elsewhere; revision 1 was vetted here");
            assertThat(other.bean(Banks.class).require(bank.id()).state()).as("nothing approved changes").isEqualTo(BankState.APPROVED);
            assertThat(other.bean(JdbcClient.class).sql("select detail from audit_event where action = 'part revisions imported' and subject_id = :id")
                    .param("id", partId.toString()).query(String.class).single()).contains("\"after\":1", "\"revision\":3");

            TeamBench.as(other.administrator(), () -> other.bean(Library.class).revise(partId, there.version(), TeamBench.polymer(partNumber, 0.008), other.administrator()));
            assertThat(other.look(export(another().id())).conflicts()).as("a shorter history is no conflict").isEmpty();
            bench.revisePart(0.009);
            assertThat(other.look(export(another().id())).conflicts()).singleElement().asString()
                    .contains("The history of part '" + partNumber + "' forks at revision 4", "the one here is by Admin");
        }
    }

    @Test
    void whatIsHereIsJudgedByThisTeamAlone() throws Exception {
        approved();
        UUID partId = bench.part().id();
        CurrentPerson librarian = people.with(Role.LIBRARIAN);
        UUID sweepId = TeamBench.as(librarian, () -> library.importSweep(partId, "a.s1p", "a".getBytes(StandardCharsets.UTF_8), new SweepDocument(
                new SweepProvenance(null, "Somebody", LocalDate.of(2031, 1, 1), null, "impedance", null, null, null, 0, 25, null, null), "Touchstone 1", null, 50.0,
                List.of(), new double[] {1e3, 1e4}, new double[] {0.01, 0.01}, new double[] {-160, -16}, null), librarian).id());
        try (OtherInstallation other = OtherInstallation.start()) {
            other.take(export(), "First");
            TeamBench.as(librarian, () -> {
                library.exempt(partId, VettingItem.SWEEP, "because we say so", librarian);
                return null;
            });
            jdbc.sql("""
                            insert into finding_acceptance (id, sweep_id, kind, finding, reason, person_id, person, accepted_at)
                            values (:id, :sweep, 'FEW_POINTS', 'a', 'b', :person, 'c', current_timestamp)""")
                    .param("id", UUID.randomUUID()).param("sweep", sweepId).param("person", librarian.id()).update();
            Project next = another();
            String file = export(next.id());
            assertThat(file).contains("because we say so", "FEW_POINTS");
            assertThat(other.look(file).notes()).filteredOn(note -> note.contains("is for this team to say: one reason of the file stays out")).hasSize(2);
            other.take(file, "Second");
            assertThat(other.bean(JdbcClient.class).sql("select (select count(*) from part_exemption) + (select count(*) from finding_acceptance)")
                    .query(Integer.class).single()).as("judgements that came in").isZero();
        }
        try (OtherInstallation fresh = OtherInstallation.start()) {
            fresh.take(export(), "What is new there comes with what was said of it");
            assertThat(fresh.bean(JdbcClient.class).sql("select reason from part_exemption").query(String.class).list()).containsExactly("because we say so");
        }
    }

    /** Else a page would fail later on what nobody can mend. */
    @Test
    void whatNoPageCouldReadIsRefusedInWords() throws Exception {
        approved();
        String file = export();
        String document = jdbc.sql("select document from part_revision where id = :id").param("id", bench.part().revision().id()).query(String.class).single();
        String spoilt = document.replace("POLYMER_ALUMINIUM", "PORRIDGE");
        assertThat(spoilt).isNotEqualTo(document);
        try (OtherInstallation other = OtherInstallation.start()) {
            assertThatThrownBy(() -> other.look(file.replace("\"step\":\"SUBMITTED\"", "\"step\":\"DANCED\"")))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("Table review_step has 'DANCED' as step, which this installation does not know");
            assertThatThrownBy(() -> other.look(file.replace("POLYMER_ALUMINIUM", "PORRIDGE").replace(Sha256.of(document), Sha256.of(spoilt))))
                    .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("PORRIDGE");
            assertThat(other.look(file).conflicts()).isEmpty();
        }
    }

    @Test
    void namesThatAreTakenHereDoNotStandInTheWay() throws Exception {
        Bank bank = approved();
        String file = export();
        String partNumber = bench.part().partNumber();
        String tagged = Elsewhere.here(bench.part().id(), partNumber);
        try (OtherInstallation other = OtherInstallation.start()) {
            CurrentPerson admin = other.administrator();
            Part own = TeamBench.as(admin, () -> other.bean(Library.class).propose(TeamBench.polymer(partNumber, 0.5), admin));
            TeamBench.as(admin, () -> other.bean(Projects.class).start(bench.project().name(), "Another of the name", admin));
            Arrival arrival = other.look(file);
            assertThat(arrival.conflicts()).isEmpty();
            assertThat(arrival.notes()).anyMatch(note -> note.contains("Another part '" + partNumber + "' is here already") && note.contains("'" + tagged + "'"));
            assertThat(other.bean(ProjectFiles.class).freeName(arrival)).startsWith(bench.project().name() + " (elsewhere ");
            assertThatThrownBy(() -> other.take(file, bench.project().name())).isInstanceOf(NameTakenException.class);

            UUID projectId = other.take(file, "As we call it");
            assertThat(other.bean(Projects.class).require(projectId).name()).isEqualTo("As we call it");
            Library libraryThere = other.bean(Library.class);
            assertThat(libraryThere.find(partNumber).orElseThrow().id()).isEqualTo(own.id());
            Part there = libraryThere.find(bench.part().id()).orElseThrow();
            assertThat(there.partNumber()).isEqualTo(tagged);
            assertThat(there.revision().sha256()).isEqualTo(bench.part().revision().sha256());
            assertThat(other.bean(ReviewRecords.class).of(other.bean(Banks.class).require(bank.id())).snapshot().differences()).isEmpty();
            ProjectFile back = OtherInstallation.received(other.bean(ProjectFiles.class).write(projectId)).file();
            assertThat(back.rows(ProjectTable.PART)).singleElement().satisfies(row -> assertThat(row).containsEntry("part_number", partNumber));

            Part revised = TeamBench.as(admin, () -> libraryThere.revise(there.id(), there.version(), TeamBench.polymer(tagged, 0.008), admin));
            assertThat(revised.partNumber()).isEqualTo(tagged);
            assertThat(revised.document().partNumber()).as("revisions name the part as its maker does").isEqualTo(partNumber);
        }
    }

    @Test
    void whatIsHereAlreadyOrNoProjectIsRefusedInWords() throws Exception {
        approved();
        assertThat(look(export())).contains("Nothing was stored", "This project is here already.");
        assertThat(look("{\"kind\":\"other\"}")).contains("Nothing was stored");
        assertThat(look("not json")).contains("Nothing was stored");
        assertThat(look(export().replace("\"review_step\":[", "\"no_such_table\":["))).contains("A project has no table");
        assertThat(look(export().replaceFirst("\"latest_number\":1", "\"latest_number\":\"x\""))).contains("holds something that is no whole");
        assertThat(look(export().replaceFirst("\"part_number\":\"[^\"]*\",", ""))).contains("A row of table part lacks its part_number");
    }

    @Test
    void thePageShowsWhatWouldComeInAndTakesOnlyWhatItShowed() throws Exception {
        try (OtherInstallation other = OtherInstallation.start()) {
            TeamBench there = new TeamBench(other.context(), other.administrator());
            there.addBank(4);
            String file = other.export(there.project().id());
            String name = there.project().name();
            CurrentPerson engineer = people.with(Role.ENGINEER);
            TeamBench.as(engineer, () -> context.getBean(Library.class).propose(TeamBench.polymer(there.part().partNumber(), 0.5), engineer));
            TeamBench.as(engineer, () -> context.getBean(Projects.class).start(name, "Another of the name", engineer));

            assertThat(look(file)).contains("What it brings", "1 rail, 1 bank with 1 revision", "Another part &#39;" + there.part().partNumber() + "&#39; is here already",
                    "Admin (admin) has no account here", "It is called " + name + " there", "value=\"" + name + " (elsewhere ");
            assertThat(named(name)).as("a look stores nothing").isEqualTo(1);
            assertThat(answer(take(file, "0", "Mine"))).as("another file than was looked at").contains("What it brings");
            String seen = OtherInstallation.received(file).sha256();
            assertThat(answer(take(file, seen, name))).contains("exists already; choose another name", "value=\"" + name + "\"");
            assertThat(answer(take(file, seen, " "))).contains("Name is missing");
            mvc.perform(take(file, seen, name + " again").header("HX-Request", "true")).andExpect(status().isOk())
                    .andExpect(header().string("HX-Redirect", startsWith("/projects/")));
            assertThat(named(name)).isEqualTo(2);
        }
    }

    @Test
    void whoTakesItInAsAnEngineerMayBecomeItsMember() throws Exception {
        CurrentPerson both = people.with(Role.ADMINISTRATOR, Role.ENGINEER);
        try (OtherInstallation other = OtherInstallation.start()) {
            assertThat(takenBy(both, other, true)).satisfies(id -> assertThat(context.getBean(Projects.class).isMember(id, both)).isTrue());
            assertThat(takenBy(both, other, false)).satisfies(id -> assertThat(context.getBean(Projects.class).hasEditor(id)).isFalse());
            CurrentPerson administrator = people.with(Role.ADMINISTRATOR);
            assertThat(takenBy(administrator, other, false)).satisfies(id -> assertThat(context.getBean(Projects.class).hasEditor(id)).isFalse());
        }
    }

    private UUID takenBy(CurrentPerson person, OtherInstallation other, boolean asMember) throws Exception {
        TeamBench there = new TeamBench(other.context(), other.administrator());
        there.addBank(4);
        String file = other.export(there.project().id());
        String looked = answer(multipart("/projects/import").file(upload(file)).with(people.as(person)).with(csrf()));
        if (person.has(Role.ENGINEER)) {
            assertThat(looked).containsPattern("name=\"member\" value=\"yes\" checked");
        } else {
            assertThat(looked).doesNotContain("name=\"member\"");
        }
        MockMultipartHttpServletRequestBuilder take = multipart("/projects/import").file(upload(file)).param("take", "yes")
                .param("seen", OtherInstallation.received(file).sha256()).param("name", there.project().name());
        if (asMember) {
            take.param("member", "yes");
        }
        MvcResult result = mvc.perform(take.with(people.as(person)).with(csrf())).andExpect(status().is3xxRedirection()).andReturn();
        assertThat(result.getFlashMap().get("notice").toString().contains("No member can sign in here")).isNotEqualTo(asMember);
        return there.project().id();
    }

    @Test
    void theRecordOfAProjectStandsBesideThatOfItsOrigin() throws Exception {
        CurrentPerson administrator = people.with(Role.ADMINISTRATOR);
        try (OtherInstallation other = OtherInstallation.start()) {
            UUID projectId = takenBy(administrator, other, false);
            String origin = other.bean(AuditLines.class).ownChain();
            String path = "/projects/" + projectId + "/record";
            assertThat(page(path)).contains("this installation: 1 line", "project imported").doesNotContain("bank added");
            assertThat(page(path + "?chain=" + origin)).contains("to read only", "project started", "Each line on this page gives the hash")
                    .doesNotContain("project imported", "Not as they were written");
            jdbc.sql("update origin_audit_event set actor = 'nobody' where chain = :chain and action = 'project started'").param("chain", origin).update();
            assertThat(page(path + "?chain=" + origin)).contains("Not as they were written").doesNotContain("Each line on this page gives the hash");
            jdbc.sql("update origin_audit_event set actor = 'admin' where chain = :chain and action = 'project started'").param("chain", origin).update();
            mvc.perform(get(path + "?chain=none").with(people.as(Role.VIEWER))).andExpect(status().isNotFound());
        }
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path).with(people.as(Role.VIEWER))).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
    }

    private int named(String start) {
        return jdbc.sql("select count(*) from project where name like :name").param("name", start + "%").query(Integer.class).single();
    }

    private String answer(MockMultipartHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
    }

    private MockMultipartHttpServletRequestBuilder take(String file, String seen, String name) {
        return multipart("/projects/import").file(upload(file)).param("take", "yes").param("seen", seen).param("name", name)
                .with(people.as(Role.ADMINISTRATOR)).with(csrf());
    }
}
