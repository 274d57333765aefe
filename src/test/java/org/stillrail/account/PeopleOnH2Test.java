package org.stillrail.account;

import org.stillrail.support.TestDatabase;

class PeopleOnH2Test extends PeopleSuite {

    PeopleOnH2Test() {
        super(TestDatabase.h2());
    }
}
