package org.stillrail.account;

import org.stillrail.support.TestDatabase;

class SetupCodeOnH2Test extends SetupCodeSuite {

    SetupCodeOnH2Test() {
        super(TestDatabase.freshH2());
    }
}
