package org.stillrail.library;

import org.stillrail.support.TestDatabase;

class LibraryRowsOnPostgresTest extends LibraryRowsSuite {

    LibraryRowsOnPostgresTest() {
        super(TestDatabase.postgres());
    }
}
