package org.stillrail.electrical.requirement;

/** A curve, bar or table of the bank page that explains a verdict. */
public enum ExplainingSeries {
    BANK_IMPEDANCE, BANK_ESR, QUIET_LIMIT, RIPPLE, SENSITIVITY, LOOP_GAIN, STEP, RELEASE, BANK_ALONE, WORST_LOAD, VOLTAGE_RULER, STRESS_TABLE, BRANCH_CARDS
}
