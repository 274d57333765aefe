package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class PeoplePagesTest {

    private static final Pattern ONE_TIME = Pattern.compile("id=\"one-time-password\">([a-z2-9-]{29})<");
    private static final Pattern NEW_TOKEN = Pattern.compile("id=\"new-token\">(sr_[A-Za-z0-9_-]{43})<");

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private People stored;

    @Autowired
    private Tokens tokens;

    private ResultActions asAdministrator(MockHttpServletRequestBuilder call) throws Exception {
        return mvc.perform(call.with(people.as(Role.ADMINISTRATOR)).with(csrf()));
    }

    private static String only(Pattern pattern, ResultActions answer) throws Exception {
        Matcher found = pattern.matcher(answer.andReturn().getResponse().getContentAsString());
        assertThat(found.find()).as("%s on the page", pattern).isTrue();
        return found.group(1);
    }

    private static String freshName() {
        return "new-" + UUID.randomUUID().toString().substring(0, 13);
    }

    @Test
    void aNewPersonChoosesAPasswordBeforeAnythingElse() throws Exception {
        String userName = freshName();
        String oneTime = only(ONE_TIME, asAdministrator(post("/people")
                .param("userName", userName).param("displayName", "New Colleague").param("roles", "ENGINEER", "REVIEWER")));
        assertThat(stored.byUserName(userName).orElseThrow().roles()).containsExactlyInAnyOrder(Role.ENGINEER, Role.REVIEWER);

        Cookie session = mvc.perform(formLogin("/sign-in").user("userName", userName).password("password", oneTime))
                .andExpect(redirectedUrl("/")).andReturn().getResponse().getCookie("stillrail-session");
        mvc.perform(get("/audit").cookie(session)).andExpect(redirectedUrl("/account/password"));
        mvc.perform(post("/account/tokens").cookie(session).with(csrf()).param("name", "early"))
                .andExpect(redirectedUrl("/account/password"));
        mvc.perform(get("/account/password").cookie(session)).andExpect(content().string(containsString("one-time password")));
        mvc.perform(post("/account/password").cookie(session).with(csrf())
                        .param("current", oneTime).param("password", "my own plain words").param("repeated", "my own plain words"))
                .andExpect(redirectedUrl("/sign-in?changed"));

        Cookie own = mvc.perform(formLogin("/sign-in").user("userName", userName).password("password", "my own plain words"))
                .andReturn().getResponse().getCookie("stillrail-session");
        mvc.perform(get("/audit").cookie(own)).andExpect(status().isOk());
    }

    @Test
    void everyWrongFieldIsNamedAtOnceAndWhatWasTypedIsKept() throws Exception {
        asAdministrator(post("/people").param("userName", "No Spaces!").param("displayName", "  "))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(allOf(
                        containsString("3 fields need attention"), containsString("A user name has 2 to 40 letters"),
                        containsString("The name is missing"), containsString("at least one role"),
                        containsString("value=\"No Spaces!\""))));
    }

    @Test
    void aUserNameIsTakenOnce() throws Exception {
        String taken = people.another(Role.VIEWER).userName();
        asAdministrator(post("/people").param("userName", taken).param("displayName", "Namesake").param("roles", "VIEWER"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(allOf(
                        containsString("This user name is taken"), containsString("value=\"Namesake\""))));
    }

    @Test
    void whatAPersonIsCalledCannotBecomeMarkup() throws Exception {
        asAdministrator(post("/people").param("userName", freshName())
                        .param("displayName", "<script>alert(1)</script>").param("roles", "VIEWER"))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("<script>alert"))));
        asAdministrator(get("/people")).andExpect(content().string(containsString("&lt;script&gt;alert")));
    }

    @Test
    void rolesAreChangedTogether() throws Exception {
        CurrentPerson person = people.another(Role.VIEWER);
        asAdministrator(post("/people/{id}/roles", person.id()).param("seen", "VIEWER").param("roles", "LIBRARIAN", "ENGINEER"))
                .andExpect(redirectedUrl("/people/" + person.id()));
        assertThat(stored.byId(person.id()).orElseThrow().roles()).isEqualTo(Set.of(Role.LIBRARIAN, Role.ENGINEER));
        asAdministrator(post("/people/{id}/roles", person.id())).andExpect(status().isUnprocessableContent());
        asAdministrator(post("/people/{id}/roles", person.id()).param("roles", "EMPEROR"))
                .andExpect(status().isUnprocessableContent());
        assertThat(stored.byId(person.id()).orElseThrow().roles()).isEqualTo(Set.of(Role.LIBRARIAN, Role.ENGINEER));
    }

    @Test
    void someoneWhoLeftCanBeLetInAgain() throws Exception {
        CurrentPerson person = people.another(Role.VIEWER);
        asAdministrator(post("/people/{id}/deactivate", person.id())).andExpect(redirectedUrl("/people/" + person.id()));
        assertThat(stored.byId(person.id()).orElseThrow().active()).isFalse();
        asAdministrator(get("/people/{id}", person.id())).andExpect(content().string(containsString("cannot sign in")));
        asAdministrator(post("/people/{id}/reactivate", person.id())).andExpect(redirectedUrl("/people/" + person.id()));
        assertThat(stored.byId(person.id()).orElseThrow().active()).isTrue();
    }

    @Test
    void aForgottenPasswordIsReplacedByAOneTimePassword() throws Exception {
        CurrentPerson person = people.another(Role.VIEWER);
        String oneTime = only(ONE_TIME, asAdministrator(post("/people/{id}/password", person.id())));
        mvc.perform(formLogin("/sign-in").user("userName", person.userName()).password("password", TestPeople.PASSWORD))
                .andExpect(redirectedUrl("/sign-in?failed"));
        mvc.perform(formLogin("/sign-in").user("userName", person.userName()).password("password", oneTime))
                .andExpect(redirectedUrl("/"));
    }

    @Test
    void aTokenIsShownOnceAndRevokedByItsOwnerOrAnAdministrator() throws Exception {
        CurrentPerson person = people.another(Role.ENGINEER);
        String first = only(NEW_TOKEN, mvc.perform(
                post("/account/tokens").with(people.as(person)).with(csrf()).param("name", "bench script")));
        String second = only(NEW_TOKEN, mvc.perform(
                post("/account/tokens").with(people.as(person)).with(csrf()).param("name", "plotter")));
        mvc.perform(get("/account").with(people.as(person)))
                .andExpect(content().string(allOf(containsString("bench script"), not(containsString(first)))));

        UUID firstId = tokens.presented(first).orElseThrow().id();
        UUID secondId = tokens.presented(second).orElseThrow().id();
        mvc.perform(post("/account/tokens/{id}/revoke", firstId).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(status().isNotFound());
        assertThat(tokens.presented(first)).isPresent();
        mvc.perform(post("/account/tokens/{id}/revoke", firstId).with(people.as(person)).with(csrf()))
                .andExpect(redirectedUrl("/account"));
        asAdministrator(post("/people/{id}/tokens/{token}/revoke", person.id(), secondId))
                .andExpect(redirectedUrl("/people/" + person.id()));
        assertThat(tokens.presented(first)).isEmpty();
        assertThat(tokens.presented(second)).isEmpty();
    }

    @Test
    void aTokenNeedsAName() throws Exception {
        mvc.perform(post("/account/tokens").with(people.as(Role.ENGINEER)).with(csrf()).param("name", " "))
                .andExpect(status().isUnprocessableContent()).andExpect(content().string(containsString("The name is missing")));
    }

    @Test
    void aWrongCurrentPasswordChangesNothing() throws Exception {
        CurrentPerson person = people.another(Role.VIEWER);
        mvc.perform(post("/account/password").with(people.as(person)).with(csrf())
                        .param("current", "not the password").param("password", "other plain words")
                        .param("repeated", "other plain words"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("not your current password")));
        mvc.perform(post("/account/password").with(people.as(person)).with(csrf()).param("password", "short"))
                .andExpect(content().string(allOf(
                        containsString("The current password is missing"), containsString("at least 12 characters"))));
        mvc.perform(formLogin("/sign-in").user("userName", person.userName()).password("password", TestPeople.PASSWORD))
                .andExpect(redirectedUrl("/"));
    }

    @Test
    void nobodyByThisIdIsAPageInWords() throws Exception {
        asAdministrator(get("/people/{id}", UUID.randomUUID())).andExpect(status().isNotFound());
        asAdministrator(get("/people/{id}", "not-an-id")).andExpect(status().isBadRequest());
    }

    @Test
    void setupIsClosedOnceSomeoneHasAnAccount() throws Exception {
        people.with(Role.VIEWER);
        mvc.perform(get("/setup")).andExpect(redirectedUrl("/sign-in"));
        mvc.perform(post("/setup").with(csrf()).param("code", "x")).andExpect(redirectedUrl("/sign-in"));
    }
}
