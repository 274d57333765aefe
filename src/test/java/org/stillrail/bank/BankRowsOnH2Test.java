package org.stillrail.bank;

import org.stillrail.support.TestDatabase;

class BankRowsOnH2Test extends BankRowsSuite {

    BankRowsOnH2Test() {
        super(TestDatabase.h2());
    }
}
