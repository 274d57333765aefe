package org.stillrail.journey;

import org.junit.jupiter.api.Test;

/** Somebody who has never seen the tool opens the demo. */
@Browsing
class NewcomerJourney {

    @Test
    void findsOutWhyTheBadBankIsBad(Visitor newcomer) {
        newcomer.open("/");
        newcomer.seesHeading("Sign in");
        newcomer.sees("Accounts of the demo");
        newcomer.sees("An invented team");
        newcomer.signInAs("viewer");

        newcomer.follow("Projects");
        newcomer.seesHeading("Projects");
        newcomer.follow("One big, one tiny");
        newcomer.seesHeading("One big, one tiny");
    }
}
