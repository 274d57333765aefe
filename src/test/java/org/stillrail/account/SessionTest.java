package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class SessionTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private Accounts accounts;

    @Autowired
    private People stored;

    @Autowired
    private JdbcClient jdbc;

    private Cookie signIn(CurrentPerson person) throws Exception {
        return mvc.perform(formLogin("/sign-in").user("userName", person.userName()).password("password", TestPeople.PASSWORD))
                .andExpect(redirectedUrl("/")).andReturn().getResponse().getCookie("stillrail-session");
    }

    private void isOpen(Cookie session) throws Exception {
        mvc.perform(get("/account").cookie(session)).andExpect(status().isOk());
    }

    private void isEnded(Cookie session) throws Exception {
        mvc.perform(get("/account").cookie(session)).andExpect(redirectedUrl("/sign-in"));
    }

    private static String sessionId(Cookie session) {
        return new String(Base64.getDecoder().decode(session.getValue()), StandardCharsets.UTF_8);
    }

    @Test
    void theCookieIsForThisSiteOnlyAndClosedToScripts() throws Exception {
        Cookie session = signIn(people.another(Role.VIEWER));
        assertThat(session.isHttpOnly()).isTrue();
        assertThat(session.getAttribute("SameSite")).isEqualTo("Lax");
        assertThat(session.getMaxAge()).isEqualTo(-1);
        assertThat(mvc.perform(get("/sign-in").secure(true)).andReturn().getResponse().getCookie("stillrail-session").getSecure())
                .isTrue();
    }

    @Test
    void signingInMakesANewSession() throws Exception {
        Cookie before = mvc.perform(get("/sign-in")).andReturn().getResponse().getCookie("stillrail-session");
        Cookie after = mvc.perform(post("/sign-in").cookie(before).with(csrf())
                        .param("userName", people.another(Role.VIEWER).userName()).param("password", TestPeople.PASSWORD))
                .andReturn().getResponse().getCookie("stillrail-session");
        assertThat(sessionId(after)).isNotEqualTo(sessionId(before));
        isOpen(after);
        isEnded(before);
    }

    @Test
    void thePasswordHashIsNotStoredWithTheSession() throws Exception {
        Cookie session = signIn(people.another(Role.VIEWER));
        assertThat(jdbc.sql("""
                                select a.attribute_bytes from spring_session_attributes a
                                join spring_session s on s.primary_id = a.session_primary_id where s.session_id = :id""")
                .param("id", sessionId(session)).query(byte[].class).list())
                .isNotEmpty()
                .allSatisfy(bytes -> assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).doesNotContain("argon2"));
    }

    @Test
    void aSessionOfAnotherVersionCountsAsSignedOut() throws Exception {
        Cookie session = signIn(people.another(Role.VIEWER));
        // As after an update: the class version that Java wrote into the bytes no longer fits.
        byte[] bytes = jdbc.sql("""
                        select a.attribute_bytes from spring_session_attributes a
                        join spring_session s on s.primary_id = a.session_primary_id
                        where s.session_id = :id and a.attribute_name = 'SPRING_SECURITY_CONTEXT'""")
                .param("id", sessionId(session)).query(byte[].class).single();
        String name = "org.stillrail.account.CurrentPerson";
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(name);
        assertThat(at).isPositive();
        bytes[at + name.length()] ^= 0x55;
        jdbc.sql("""
                        update spring_session_attributes set attribute_bytes = :bytes
                        where attribute_name = 'SPRING_SECURITY_CONTEXT'
                            and session_primary_id = (select primary_id from spring_session where session_id = :id)""")
                .param("bytes", bytes).param("id", sessionId(session)).update();
        isEnded(session);
        mvc.perform(get("/sign-in").cookie(session)).andExpect(status().isOk());
    }

    @Test
    void signingOutEndsTheSession() throws Exception {
        Cookie session = signIn(people.another(Role.VIEWER));
        mvc.perform(post("/sign-out").cookie(session).with(csrf())).andExpect(redirectedUrl("/sign-in?signed-out"));
        isEnded(session);
    }

    @Test
    void aChangeOfRolesEndsTheSessions() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        Cookie session = signIn(person);
        isOpen(session);
        Person before = stored.byId(person.id()).orElseThrow();
        accounts.changeRoles(before, before.roles(), Set.of(Role.VIEWER), "tests");
        isEnded(session);
    }

    @Test
    void leavingEndsTheSessions() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        Cookie session = signIn(person);
        accounts.deactivate(stored.byId(person.id()).orElseThrow(), "tests");
        isEnded(session);
    }

    @Test
    void aNewPasswordEndsAllSessionsAndWorks() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        Cookie here = signIn(person);
        Cookie elsewhere = signIn(person);
        mvc.perform(post("/account/password").cookie(here).with(csrf())
                        .param("current", TestPeople.PASSWORD)
                        .param("password", "other plain words").param("repeated", "other plain words"))
                .andExpect(redirectedUrl("/sign-in?changed"));
        isEnded(here);
        isEnded(elsewhere);
        mvc.perform(formLogin("/sign-in").user("userName", person.userName()).password("password", "other plain words"))
                .andExpect(redirectedUrl("/"));
    }

    @Test
    void theFormTokenOfTheSessionIsToldToItsOwnerOnly() throws Exception {
        mvc.perform(get("/form-token").cookie(signIn(people.another(Role.VIEWER))))
                .andExpect(jsonPath("$.parameterName").value("_csrf"))
                .andExpect(jsonPath("$.headerName").value("X-CSRF-TOKEN"))
                .andExpect(jsonPath("$.token").isNotEmpty());
        mvc.perform(get("/form-token").header("Sec-Fetch-Mode", "cors")).andExpect(status().isUnauthorized());
    }
}
