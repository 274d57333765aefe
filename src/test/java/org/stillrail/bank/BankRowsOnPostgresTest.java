package org.stillrail.bank;

import org.stillrail.support.TestDatabase;

class BankRowsOnPostgresTest extends BankRowsSuite {

    BankRowsOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
