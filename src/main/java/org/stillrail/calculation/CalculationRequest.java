package org.stillrail.calculation;

/** Marks the records that the strict JSON reader fills. Absent fields are null. */
interface CalculationRequest {
}
