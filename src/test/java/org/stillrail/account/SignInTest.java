package org.stillrail.account;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class SignInTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Test
    void rightPasswordSignsIn() throws Exception {
        String userName = people.another(Role.ENGINEER).userName();
        mvc.perform(post("/sign-in").with(csrf()).param("userName", userName).param("password", TestPeople.PASSWORD))
                .andExpect(redirectedUrl("/"));
    }

    @Test
    void everyoneSignedInReadsTheRecord() throws Exception {
        mvc.perform(get("/audit").with(people.as(Role.VIEWER))).andExpect(status().isOk());
        mvc.perform(get("/audit/check").with(people.as(Role.VIEWER))).andExpect(status().isOk());
    }
}
