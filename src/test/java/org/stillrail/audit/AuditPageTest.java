package org.stillrail.audit;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.Role;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class AuditPageTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void theNewestLinesComeFirstAndOlderOnesArePagesAway() throws Exception {
        for (int line = 0; line < 60; line++) {
            trail.record("page-test", "tried", "page-line", "no-" + line + ".", Map.of("<b>", line));
        }
        long newest = jdbc.sql("select max(sequence_number) from audit_event").query(Long.class).single();
        mvc.perform(get("/audit").with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(
                        containsString("no-59."), containsString("no-12."), not(containsString("no-5.")),
                        containsString("Older"), containsString("&lt;b&gt;"))));
        mvc.perform(get("/audit").param("before", Long.toString(newest - 49)).with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(
                        containsString("no-5."), not(containsString("no-59.")), containsString("Newest"))));
        mvc.perform(get("/audit").param("before", "x").with(people.as(Role.VIEWER))).andExpect(status().isBadRequest());
    }

    @Test
    void theCheckSaysWhereTheChainBreaks() throws Exception {
        trail.record("page-test", "tried", "thing", "1", Map.of("verdict", "not met"));
        mvc.perform(get("/audit/check").with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("are as they were written")));
        long number = jdbc.sql("select max(sequence_number) from audit_event where actor = 'page-test'")
                .query(Long.class).single();
        setDetail(number, "{\"verdict\":\"met\"}");
        try {
            mvc.perform(get("/audit/check").with(people.as(Role.VIEWER)))
                    .andExpect(content().string(containsString("The chain breaks at line <span>" + number + "</span>")));
        } finally {
            setDetail(number, "{\"verdict\":\"not met\"}");
        }
    }

    private void setDetail(long number, String detail) {
        jdbc.sql("update audit_event set detail = :detail where sequence_number = :number")
                .param("detail", detail).param("number", number).update();
    }
}
