package org.stillrail.review;

import org.stillrail.support.TestDatabase;

class ReviewRowsOnPostgresTest extends ReviewRowsSuite {

    ReviewRowsOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
