package org.stillrail.library;

import java.util.List;
import org.stillrail.electrical.quality.Finding;

/** A finding as a page shows it. @param acceptance null where nobody accepted it */
record FindingLine(Finding finding, FindingAcceptance acceptance) {

    static List<FindingLine> of(List<Finding> findings, List<FindingAcceptance> acceptances) {
        return findings.stream()
                .map(finding -> new FindingLine(finding,
                        acceptances.stream().filter(accepted -> accepted.kind() == finding.kind()).findFirst().orElse(null)))
                .toList();
    }
}
