package org.stillrail.audit;

import org.stillrail.support.TestDatabase;

class AuditLinesOnPostgresTest extends AuditLinesSuite {

    AuditLinesOnPostgresTest() {
        super(TestDatabase.freshPostgres());
    }
}
