package org.stillrail.review;

import org.stillrail.support.TestDatabase;

class ReviewRowsOnH2Test extends ReviewRowsSuite {

    ReviewRowsOnH2Test() {
        super(TestDatabase.h2());
    }
}
