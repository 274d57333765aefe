/** Branches in parallel: the impedance of a bank, who carries the current, and what each branch does. */
package org.stillrail.electrical.bank;
