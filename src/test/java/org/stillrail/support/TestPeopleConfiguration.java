package org.stillrail.support;

import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.stillrail.account.Accounts;

/** Adds {@link TestPeople} to the shared context. */
@TestConfiguration(proxyBeanMethods = false)
class TestPeopleConfiguration {

    @Bean
    TestPeople testPeople(Accounts accounts) {
        return new TestPeople(accounts);
    }
}
