package org.stillrail.calculation;

import java.util.List;

/** Marks the records that are written as answers: SI units, no number that is not finite. */
interface CalculationAnswer {

    /** Sentences that a reader of the figures should know; empty where there is nothing to say. */
    List<String> warnings();
}
