package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

/** A project whose members cannot sign in here gets its first one from an administrator, and from nobody else. */
@AppTest
class FirstMemberTest {

    private static final String NOBODY = "No member can sign in here as an engineer";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private Projects projects;

    @Autowired
    private JdbcClient jdbc;

    private Project project;
    private CurrentPerson gone;
    private CurrentPerson newcomer;

    @BeforeEach
    void aProjectWhoseOnlyMemberHasLeft() {
        gone = people.another(Role.ENGINEER);
        newcomer = people.another(Role.ENGINEER);
        project = TeamBench.as(gone, () -> projects.start("Left alone " + UUID.randomUUID(), "Its people are elsewhere", gone));
        jdbc.sql("update person set active = false where id = :id").param("id", gone.id()).update();
    }

    private int add(CurrentPerson person, CurrentPerson by) throws Exception {
        return mvc.perform(post("/projects/" + project.id() + "/members").param("person", person.id().toString())
                .param("version", String.valueOf(projects.version(project.id()))).with(people.as(by)).with(csrf())).andReturn().getResponse().getStatus();
    }

    private String page(CurrentPerson person) throws Exception {
        return mvc.perform(get("/projects/" + project.id()).with(people.as(person))).andReturn().getResponse().getContentAsString();
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = "ADMINISTRATOR", mode = EnumSource.Mode.EXCLUDE)
    void nobodyElseAddsOneAndThePageSaysWhoCan(Role role) throws Exception {
        assertThat(page(people.with(role))).contains(NOBODY, "an administrator can add one").doesNotContain("Add as a member");
        assertThat(add(newcomer, people.with(role))).isEqualTo(403);
        assertThat(projects.isMember(project.id(), newcomer)).isFalse();
    }

    @Test
    void anAdministratorAddsOneEngineerWhoAddsTheOthers() throws Exception {
        CurrentPerson administrator = people.with(Role.ADMINISTRATOR);
        assertThat(page(administrator)).contains(NOBODY, "Add as a member", newcomer.id().toString()).doesNotContain("Add a rail", "Ask for two");
        assertThat(add(newcomer, administrator)).isEqualTo(302);
        assertThat(projects.isMember(project.id(), newcomer)).isTrue();
        assertThat(jdbc.sql("select actor from audit_event where action = 'member added' and subject_id = :id and detail like :detail")
                .param("id", project.id().toString()).param("detail", "%" + newcomer.id() + "%").query(String.class).single()).isEqualTo(administrator.userName());

        CurrentPerson another = people.another(Role.ENGINEER);
        assertThat(page(administrator)).doesNotContain(NOBODY, "Add as a member");
        assertThat(add(another, administrator)).as("members add others now").isEqualTo(403);
        assertThat(add(another, newcomer)).isEqualTo(302);
    }

    @Test
    void whoIsAddedCanEditTheProject() throws Exception {
        CurrentPerson administrator = people.with(Role.ADMINISTRATOR);
        assertThat(add(people.with(Role.VIEWER), administrator)).isEqualTo(404);
        assertThat(add(gone, administrator)).isEqualTo(404);
        assertThat(projects.hasEditor(project.id())).isFalse();
    }

    @Test
    void anAdministratorWhoIsAMemberWithoutBeingAnEngineerDoesNotAddOthers() throws Exception {
        CurrentPerson administrator = people.another(Role.ADMINISTRATOR);
        assertThat(add(newcomer, people.with(Role.ADMINISTRATOR))).isEqualTo(302);
        jdbc.sql("insert into project_member (project_id, person_id) values (:project, :person)")
                .param("project", project.id()).param("person", administrator.id()).update();
        assertThat(add(people.another(Role.ENGINEER), administrator)).isEqualTo(403);
    }
}
