package org.stillrail.calculation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.SeriesRlc;

/**
 * The bank that a request describes.
 *
 * @param warnings about how it came to be, not about its models
 */
record ResolvedBank(Bank bank, List<String> warnings) {

    /** The same bank of models that end a calculation whose time is over. */
    Bank interruptible() {
        return new Bank(bank.branches().stream().map(ResolvedBank::interruptible).toList());
    }

    /** The same, but with series R-L-C parts left as they are: in time they are recognised and followed exactly. */
    Bank interruptibleInTime() {
        return new Bank(bank.branches().stream()
                .map(branch -> branch.part() instanceof SeriesRlc ? branch : interruptible(branch))
                .toList());
    }

    private static Branch interruptible(Branch branch) {
        return new Branch(branch.label(), branch.count(), new Interruptible(branch.part()), branch.mounting(), branch.shared());
    }
}
