package org.stillrail.architecture.planted.calculation;

import java.util.List;
import org.stillrail.architecture.planted.bank.StoredBank;

/** A stateless calculation that is not stateless; it offends by an argument of a type only. */
abstract class ReadsStoredBanks {

    abstract void offends(List<StoredBank> banks);
}
