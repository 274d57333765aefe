package org.stillrail.account;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Runs once at every start, before the first request can come in: refuses a database of the other kind, fills the demo, or
 * makes the code for the first administrator.
 */
@Component
class InstallationGate implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(InstallationGate.class);

    private final Installation installation;
    private final People people;
    private final SetupCode setupCode;
    private final DemoFiller demo;
    private final TransactionTemplate transaction;
    private final boolean demoWanted;

    InstallationGate(
            Installation installation, People people, SetupCode setupCode, DemoFiller demo,
            TransactionTemplate transaction, Environment environment) {
        this.installation = installation;
        this.people = people;
        this.setupCode = setupCode;
        this.demo = demo;
        this.transaction = transaction;
        this.demoWanted = environment.acceptsProfiles(Profiles.of("demo"));
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (demoWanted) {
            transaction.executeWithoutResult(status -> openDemo());
        } else {
            // Printed after the commit: a code that did not reach the database would be of no use.
            transaction.execute(status -> openTeam()).ifPresent(LOG::warn);
        }
    }

    private void openDemo() {
        Optional<Installation.Kind> kind = installation.lock();
        if (kind.equals(Optional.of(Installation.Kind.TEAM)) || kind.isEmpty() && !people.none()) {
            throw new WrongInstallationException(
                    "The profile 'demo' is on, but this database holds a team's own data. The demo does not touch it.",
                    "Start without the profile 'demo', or give the demo a place of its own with stillrail.data-directory.");
        }
        if (kind.isEmpty()) {
            demo.fill();
        }
    }

    private Optional<String> openTeam() {
        if (installation.lock().equals(Optional.of(Installation.Kind.DEMO))) {
            throw new WrongInstallationException(
                    "This database was filled by the demo: its accounts have published passwords.",
                    "Start with the profile 'demo', or use another database (stillrail.data-directory or spring.datasource.url).");
        }
        return setupCode.renewIfNeeded();
    }
}
