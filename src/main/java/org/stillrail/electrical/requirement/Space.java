package org.stillrail.electrical.requirement;

import java.math.BigDecimal;

/** What the bank may take of the board and the budget; null is no limit. */
public record Space(Double heightM, Double areaM2, BigDecimal cost, Citation citation) {
}
