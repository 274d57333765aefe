package org.stillrail.bank.bench;

import org.stillrail.support.TestDatabase;

class BenchRowsOnPostgresTest extends BenchRowsSuite {

    BenchRowsOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
