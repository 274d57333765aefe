package org.stillrail.library;

import org.stillrail.support.TestDatabase;

class MeasurementRowsOnPostgresTest extends MeasurementRowsSuite {

    MeasurementRowsOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
