package org.stillrail.library;

import org.stillrail.support.TestDatabase;

class LibraryRowsOnH2Test extends LibraryRowsSuite {

    LibraryRowsOnH2Test() {
        super(TestDatabase.h2());
    }
}
