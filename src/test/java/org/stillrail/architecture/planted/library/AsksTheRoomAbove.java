package org.stillrail.architecture.planted.library;

import org.stillrail.architecture.planted.bank.StoredBank;

/** A library that knows its users. */
class AsksTheRoomAbove {

    StoredBank offends() {
        return new StoredBank();
    }
}
