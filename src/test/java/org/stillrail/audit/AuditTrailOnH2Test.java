package org.stillrail.audit;

import org.stillrail.support.TestDatabase;

class AuditTrailOnH2Test extends AuditTrailSuite {

    AuditTrailOnH2Test() {
        super(TestDatabase.freshH2());
    }
}
