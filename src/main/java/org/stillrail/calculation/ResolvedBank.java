package org.stillrail.calculation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;

/**
 * The bank that a request describes.
 *
 * @param warnings about how it came to be, not about its models
 */
record ResolvedBank(Bank bank, List<String> warnings) {

    /** The same bank of models that end a calculation whose time is over. */
    Bank interruptible() {
        return new Bank(bank.branches().stream()
                .map(b -> new Branch(b.label(), b.count(), new Interruptible(b.part()), b.mounting(), b.shared()))
                .toList());
    }
}
