package org.stillrail.report;

import org.stillrail.support.TestDatabase;

class ProjectTablesOnH2Test extends ProjectTablesSuite {

    ProjectTablesOnH2Test() {
        super(TestDatabase.h2());
    }
}
