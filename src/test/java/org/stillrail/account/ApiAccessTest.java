package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class ApiAccessTest {

    /** Nothing is there: whoever gets as far as a 404 was let in. */
    private static final String NOWHERE = "/api/v1/nowhere";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private Accounts accounts;

    @Autowired
    private People stored;

    @Autowired
    private Tokens tokens;

    @Autowired
    private JdbcClient jdbc;

    private static void isRefused(ResultActions answer) throws Exception {
        answer.andExpect(status().isUnauthorized())
                .andExpect(header().exists("WWW-Authenticate"))
                .andExpect(content().contentType("application/problem+json"))
                .andExpect(jsonPath("$.status").value(401))
                .andExpect(jsonPath("$.title").value("Unauthorized"));
    }

    private ResultActions with(String token) throws Exception {
        return mvc.perform(get(NOWHERE).header("Authorization", "Bearer " + token));
    }

    @Test
    void noTokenIsRefused() throws Exception {
        isRefused(mvc.perform(get(NOWHERE)));
        isRefused(mvc.perform(post(NOWHERE)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"wrong", "demo-engineer", "sr_AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", "", "two words", "\u03a9"})
    void aWrongTokenIsRefused(String token) throws Exception {
        isRefused(with(token));
    }

    @Test
    void aSessionAloneIsRefused() throws Exception {
        var signIn = formLogin("/sign-in")
                .user("userName", people.another(Role.ENGINEER).userName()).password("password", TestPeople.PASSWORD);
        var answer = mvc.perform(signIn).andReturn();
        var cookie = answer.getResponse().getCookie("stillrail-session");
        assertThat(cookie).isNotNull();
        mvc.perform(get("/account").cookie(cookie)).andExpect(status().isOk());
        isRefused(mvc.perform(get(NOWHERE).cookie(cookie)));
    }

    @Test
    void aTokenOfOursIsLetIn() throws Exception {
        with(people.token(Role.VIEWER)).andExpect(status().isNotFound());
    }

    @Test
    void aTokenDoesNotOpenPages() throws Exception {
        mvc.perform(get("/account").header("Authorization", "Bearer " + people.token(Role.VIEWER)))
                .andExpect(status().is3xxRedirection());
    }

    @Test
    void aTokenOfSomeoneWhoMayNotIsRefusedWithAReasonAndNoted() throws Exception {
        CurrentPerson person = people.another(Role.VIEWER);
        mvc.perform(post("/api/v1/calculations/impedance").contentType("application/json").content("{}")
                        .header("Authorization", "Bearer " + accounts.makeToken(person, "bench")))
                .andExpect(status().isForbidden())
                .andExpect(content().contentType("application/problem+json"))
                .andExpect(jsonPath("$.status").value(403));
        assertThat(jdbc.sql("select subject_id from audit_event where actor = :actor and action = 'refused'")
                .param("actor", person.userName()).query(String.class).list())
                .containsExactly("/api/v1/calculations/impedance");
    }

    @Test
    void aRevokedTokenIsRefused() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        String token = accounts.makeToken(person, "bench");
        with(token).andExpect(status().isNotFound());
        accounts.revokeToken(tokens.presented(token).orElseThrow(), person.userName());
        isRefused(with(token));
    }

    @Test
    void theTokenOfSomeoneWhoLeftIsRefused() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        String token = accounts.makeToken(person, "bench");
        accounts.deactivate(stored.byId(person.id()).orElseThrow(), "tests");
        isRefused(with(token));
    }

    @Test
    void theDescriptionOfTheApiIsOpen() throws Exception {
        mvc.perform(get("/api/openapi")).andExpect(status().isOk()).andExpect(jsonPath("$.openapi").exists());
    }
}
