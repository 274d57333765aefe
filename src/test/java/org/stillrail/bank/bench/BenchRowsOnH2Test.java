package org.stillrail.bank.bench;

import org.stillrail.support.TestDatabase;

class BenchRowsOnH2Test extends BenchRowsSuite {

    BenchRowsOnH2Test() {
        super(TestDatabase.h2());
    }
}
