package org.stillrail.report;

import org.stillrail.support.TestDatabase;

class ProjectTablesOnPostgresTest extends ProjectTablesSuite {

    ProjectTablesOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
