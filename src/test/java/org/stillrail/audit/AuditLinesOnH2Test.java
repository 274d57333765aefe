package org.stillrail.audit;

import org.stillrail.support.TestDatabase;

class AuditLinesOnH2Test extends AuditLinesSuite {

    AuditLinesOnH2Test() {
        super(TestDatabase.freshH2());
    }
}
