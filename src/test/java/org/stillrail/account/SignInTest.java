package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class SignInTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private JdbcClient jdbc;

    private ResultActions signIn(String userName, String password) throws Exception {
        return mvc.perform(post("/sign-in").with(csrf()).param("userName", userName).param("password", password));
    }

    private long auditLines(String actor, String action) {
        return jdbc.sql("select count(*) from audit_event where actor = :actor and action = :action")
                .param("actor", actor).param("action", action).query(Long.class).single();
    }

    @Test
    void theRightPasswordLeadsIn() throws Exception {
        String userName = people.another(Role.ENGINEER).userName();
        signIn(userName, TestPeople.PASSWORD).andExpect(redirectedUrl("/"));
        assertThat(auditLines(userName, "signed in")).isEqualTo(1);
    }

    @Test
    void capitalsInTheUserNameDoNoHarm() throws Exception {
        String userName = people.another(Role.ENGINEER).userName();
        signIn(userName.toUpperCase(Locale.ROOT), TestPeople.PASSWORD).andExpect(redirectedUrl("/"));
    }

    @Test
    void signInLeadsOnToThePageThatWasAskedFor() throws Exception {
        Cookie session = mvc.perform(get("/audit"))
                .andExpect(redirectedUrl("/sign-in")).andReturn().getResponse().getCookie("stillrail-session");
        String location = mvc.perform(post("/sign-in").cookie(session).with(csrf())
                        .param("userName", people.another(Role.VIEWER).userName()).param("password", TestPeople.PASSWORD))
                .andReturn().getResponse().getRedirectedUrl();
        assertThat(location).isEqualTo("http://localhost/audit?continue");
    }

    @Test
    void aWrongPasswordAndAnUnknownNameGetTheSameAnswer() throws Exception {
        String userName = people.another(Role.ENGINEER).userName();
        signIn(userName, "not the password").andExpect(redirectedUrl("/sign-in?failed"));
        signIn("nobody-of-this-name", "not the password").andExpect(redirectedUrl("/sign-in?failed"));
        assertThat(auditLines(userName, "sign-in failed")).isEqualTo(1);
        assertThat(auditLines("nobody-of-this-name", "sign-in failed")).isZero();
    }

    @Test
    void theTypedNameIsStillThereAfterAFailure() throws Exception {
        Cookie session = signIn("typed.name", "wrong").andReturn().getResponse().getCookie("stillrail-session");
        mvc.perform(get("/sign-in?failed").cookie(session))
                .andExpect(content().string(Matchers.containsString("value=\"typed.name\"")));
    }

    @Test
    void fiveFailuresPauseTheAccountEvenForTheRightPassword() throws Exception {
        String userName = people.another(Role.ENGINEER).userName();
        for (int failure = 0; failure < SignInFailed.LIMIT; failure++) {
            signIn(userName, "not the password");
        }
        signIn(userName, TestPeople.PASSWORD).andExpect(redirectedUrl("/sign-in?failed"));
        assertThat(auditLines(userName, "sign-in failed")).isEqualTo(SignInFailed.LIMIT);
        assertThat(jdbc.sql("select detail from audit_event where actor = :actor order by sequence_number desc limit 1")
                .param("actor", userName).query(String.class).single()).isEqualTo("{\"paused\":true}");
        jdbc.sql("update person set locked_until = :past where user_name = :name")
                .param("past", OffsetDateTime.parse("2020-01-01T00:00:00Z")).param("name", userName).update();
        signIn(userName, TestPeople.PASSWORD).andExpect(redirectedUrl("/"));
    }

    @Test
    void aPasswordOfAnyLengthIsAnsweredInWords() throws Exception {
        String userName = people.another(Role.ENGINEER).userName();
        signIn(userName, "x".repeat(200_000)).andExpect(redirectedUrl("/sign-in?failed"));
        signIn(userName, "").andExpect(redirectedUrl("/sign-in?failed"));
        mvc.perform(post("/sign-in").with(csrf())).andExpect(redirectedUrl("/sign-in?failed"));
    }

    @Test
    void whoeverLeftCannotSignIn() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        jdbc.sql("update person set active = false where id = :id").param("id", person.id()).update();
        signIn(person.userName(), TestPeople.PASSWORD).andExpect(redirectedUrl("/sign-in?failed"));
    }

    @Test
    void aFormWithoutItsTokenIsRefusedAndNoted() throws Exception {
        CurrentPerson person = people.another(Role.ADMINISTRATOR);
        mvc.perform(post("/people").with(people.as(person)).param("userName", "anyone")).andExpect(status().isForbidden());
        assertThat(auditLines(person.userName(), "refused")).isEqualTo(1);
        assertThat(jdbc.sql("select detail from audit_event where actor = :actor and action = 'refused'")
                .param("actor", person.userName()).query(String.class).single()).contains("form token");
    }

    @Test
    void aChangeThatTheRoleDoesNotAllowIsRefusedAndNoted() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        mvc.perform(post("/people").with(people.as(person)).with(csrf())).andExpect(status().isForbidden());
        assertThat(jdbc.sql("select subject_id, detail from audit_event where actor = :actor and action = 'refused'")
                .param("actor", person.userName()).query().singleRow())
                .containsEntry("subject_id", "/people")
                .containsEntry("detail", "{\"method\":\"POST\",\"reason\":\"role\"}");
    }

    @Test
    void aScriptWithoutASessionGetsAPlain401() throws Exception {
        mvc.perform(get("/audit").header("HX-Request", "true"))
                .andExpect(status().isUnauthorized()).andExpect(content().string(""));
        mvc.perform(get("/audit").header("Sec-Fetch-Mode", "cors")).andExpect(status().isUnauthorized());
        mvc.perform(get("/audit").header("Sec-Fetch-Mode", "navigate")).andExpect(redirectedUrl("/sign-in"));
    }

    @Test
    void pagesMayLoadNothingFromElsewhere() throws Exception {
        mvc.perform(get("/sign-in"))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Security-Policy", Matchers.allOf(
                        Matchers.containsString("default-src 'self'"), Matchers.containsString("script-src 'self'"),
                        Matchers.containsString("style-src 'self'"), Matchers.containsString("frame-ancestors 'none'"),
                        Matchers.not(Matchers.containsString("unsafe")))))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"));
    }

    @Test
    void noAccountOfTheDemoIsShown() throws Exception {
        mvc.perform(get("/sign-in")).andExpect(content().string(Matchers.not(Matchers.containsString(DemoAccount.PASSWORD))));
    }
}
