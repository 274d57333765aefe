package org.stillrail.audit;

import org.stillrail.support.TestDatabase;

class AuditTrailOnPostgresTest extends AuditTrailSuite {

    AuditTrailOnPostgresTest() {
        super(TestDatabase.freshPostgres());
    }
}
