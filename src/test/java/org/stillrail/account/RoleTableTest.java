package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.stillrail.support.AppTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.TestPeople;

/** Every endpoint of the application is in the table, and answers each role as the table says. */
@AppTest
class RoleTableTest {

    private final RoleTable table = RoleTable.read();

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Test
    void everyEndpointHasALineAndEveryLineAnEndpoint() {
        Set<String> endpoints = Endpoint.all(context).stream().map(Endpoint::name).collect(Collectors.toSet());
        assertThat(endpoints).filteredOn(name -> !table.names().contains(name)).as("endpoints without a line").isEmpty();
        assertThat(table.names()).filteredOn(name -> !endpoints.contains(name)).as("lines without an endpoint").isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyoneIsAnsweredAsTheTableSays() {
        return Endpoint.all(context).stream()
                .filter(endpoint -> table.names().contains(endpoint.name()))
                .map(endpoint -> DynamicTest.dynamicTest(endpoint.name(), () -> check(endpoint)));
    }

    private void check(Endpoint endpoint) throws Exception {
        assertAnswer(endpoint, Optional.empty(), table.strangerMay(endpoint));
        for (Role role : Role.values()) {
            assertAnswer(endpoint, Optional.of(role), table.may(role, endpoint));
        }
    }

    private void assertAnswer(Endpoint endpoint, Optional<Role> role, boolean may) throws Exception {
        int status = statusFor(endpoint, role);
        String who = role.map(Role::label).orElse("stranger") + ": " + endpoint.name() + " answered " + status;
        if (may) {
            assertThat(status).as(who).isNotIn(401, 403).isLessThan(500);
        } else {
            assertThat(status).as(who).isEqualTo(role.isPresent() ? 403 : 401);
        }
    }

    private int statusFor(Endpoint endpoint, Optional<Role> role) throws Exception {
        AbstractMockHttpServletRequestBuilder<?> call = call(endpoint);
        if (endpoint.isApi()) {
            role.ifPresent(r -> call.header("Authorization", "Bearer " + people.token(r)));
        } else {
            // As htmx calls: a stranger then gets a 401 and not the way to the sign-in page.
            call.header("HX-Request", "true").with(csrf());
            role.ifPresent(r -> call.with(people.as(r)));
        }
        return mvc.perform(call).andReturn().getResponse().getStatus();
    }

    private static AbstractMockHttpServletRequestBuilder<?> call(Endpoint endpoint) {
        HttpMethod method = HttpMethod.valueOf(endpoint.method().equals("ANY") ? "GET" : endpoint.method());
        MediaType body = endpoint.consumes();
        if (body != null && body.getType().equals("multipart")) {
            return multipart(method, endpoint.harmlessPath()).file(new MockMultipartFile("file", new byte[0]));
        }
        AbstractMockHttpServletRequestBuilder<?> call = request(method, endpoint.harmlessPath());
        if (body != null) {
            call.contentType(body).content("{}");
        }
        return call;
    }
}
