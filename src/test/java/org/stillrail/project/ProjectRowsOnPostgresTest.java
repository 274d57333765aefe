package org.stillrail.project;

import org.stillrail.support.TestDatabase;

class ProjectRowsOnPostgresTest extends ProjectRowsSuite {

    ProjectRowsOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
