package org.stillrail.library;

import org.stillrail.support.TestDatabase;

class MeasurementRowsOnH2Test extends MeasurementRowsSuite {

    MeasurementRowsOnH2Test() {
        super(TestDatabase.h2());
    }
}
