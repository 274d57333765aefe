package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.support.AppTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

/**
 * What belongs to a project is changed by its members: an engineer of another project is refused at every endpoint that writes
 * below a project, a rail or a bank. A new endpoint is asked as well, unless it is named among those that anyone may use.
 */
@AppTest
class MembersOnlyTest {

    /** Comments are for everyone who works with banks; reviewers, who need not be members, take these steps and are tested in their room. */
    private static final Set<String> FOR_OTHERS = Set.of(
            "POST /banks/{bankId}/revisions/{number}/comments",
            "POST /banks/{bankId}/revisions/{number}/approve",
            "POST /banks/{bankId}/revisions/{number}/return",
            "POST /banks/{bankId}/revisions/{number}/recall");

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Test
    void anEngineerOfAnotherProjectChangesNothing() throws Exception {
        TeamBench bench = new TeamBench(context, people.with(Role.ENGINEER));
        Bank bank = bench.addBank(4);
        CurrentPerson outsider = people.another(Role.ENGINEER);
        Map<String, String> ids = Map.of("projectId", bench.project().id().toString(), "railId", bench.rail().id().toString(),
                "bankId", bank.id().toString(), "personId", outsider.id().toString(), "number", "1");
        Set<String> asked = new TreeSet<>();
        Map<String, Integer> answers = new TreeMap<>();
        for (Endpoint endpoint : Endpoint.all(context)) {
            boolean below = endpoint.path().matches("/(projects|rails|banks)/\\{.*");
            boolean edits = endpoint.method().equals("POST") || endpoint.path().matches(".*/(new|edit)");
            if (below && edits && !FOR_OTHERS.contains(endpoint.name()) && !endpoint.path().contains("{recordId}")) {
                asked.add(endpoint.name());
                int status = mvc.perform(call(endpoint, ids, bank).with(people.as(outsider)).with(csrf())).andReturn().getResponse().getStatus();
                if (status != 403) {
                    answers.put(endpoint.name(), status);
                }
            }
        }
        assertThat(answers).as("answers other than 403").isEmpty();
        assertThat(asked).contains("POST /projects/{projectId}/members", "GET /rails/{railId}/edit", "POST /banks/{bankId}");
    }

    private static AbstractMockHttpServletRequestBuilder<?> call(Endpoint endpoint, Map<String, String> ids, Bank bank) {
        String path = endpoint.path();
        for (Map.Entry<String, String> id : ids.entrySet()) {
            path = path.replace("{" + id.getKey() + "}", id.getValue());
        }
        HttpMethod method = HttpMethod.valueOf(endpoint.method());
        AbstractMockHttpServletRequestBuilder<?> call = endpoint.consumes() != null && endpoint.consumes().getType().equals("multipart")
                ? multipart(method, path).file(new MockMultipartFile("file", new byte[0])) : request(method, path);
        // What a handler reads before it knows whose the thing is.
        return call.param("person", ids.get("personId")).param("revision", bank.revision().id().toString()).param("version", "0")
                .param("signatures", "2");
    }
}
