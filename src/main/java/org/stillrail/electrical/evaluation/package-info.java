/** The one entry to all figures of a bank: page, snapshot, recomputation and comparison call only this. */
package org.stillrail.electrical.evaluation;
