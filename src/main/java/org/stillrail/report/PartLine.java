package org.stillrail.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillrail.bank.BranchDocument;
import org.stillrail.library.Part;

/**
 * One branch as a bill of materials and an evidence table know it.
 *
 * @param part       null for figures that were typed on the bank's page
 * @param alternates that may be fitted instead
 */
record PartLine(BranchDocument branch, Part part, List<Part> alternates) {

    public String partNumber() {
        return part == null ? "(figures typed on the bank's page)" : part.partNumber();
    }

    /** What may be fitted: the part and its alternates; empty for typed figures. */
    public List<Part> choices() {
        return Stream.concat(Stream.ofNullable(part), alternates.stream()).toList();
    }

    /** Null where there are none. */
    public String alternateNumbers() {
        return alternates.isEmpty() ? null : alternates.stream().map(Part::partNumber).collect(Collectors.joining(", "));
    }

    /** Null where the cost of one is not known. */
    BigDecimal cost() {
        return part == null || part.document().cost() == null ? null
                : part.document().cost().multiply(BigDecimal.valueOf(branch.count()));
    }
}
