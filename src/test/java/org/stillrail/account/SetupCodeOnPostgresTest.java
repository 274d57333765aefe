package org.stillrail.account;

import org.stillrail.support.TestDatabase;

class SetupCodeOnPostgresTest extends SetupCodeSuite {

    SetupCodeOnPostgresTest() {
        super(TestDatabase.freshPostgres());
    }
}
