package org.stillrail.report;

import java.math.BigDecimal;
import org.stillrail.bank.BranchDocument;
import org.stillrail.library.Part;

/**
 * One branch as a bill of materials and an evidence table know it.
 *
 * @param part null for figures that were typed on the bank's page
 */
record PartLine(BranchDocument branch, Part part) {

    public String partNumber() {
        return part == null ? "(figures typed on the bank's page)" : part.partNumber();
    }

    /** Null where the cost of one is not known. */
    BigDecimal cost() {
        return part == null || part.document().cost() == null ? null
                : part.document().cost().multiply(BigDecimal.valueOf(branch.count()));
    }
}
