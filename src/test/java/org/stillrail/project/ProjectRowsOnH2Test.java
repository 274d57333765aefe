package org.stillrail.project;

import org.stillrail.support.TestDatabase;

class ProjectRowsOnH2Test extends ProjectRowsSuite {

    ProjectRowsOnH2Test() {
        super(TestDatabase.h2());
    }
}
