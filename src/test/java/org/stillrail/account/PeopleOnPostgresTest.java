package org.stillrail.account;

import org.stillrail.support.TestDatabase;

class PeopleOnPostgresTest extends PeopleSuite {

    PeopleOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
