/** What a rail asks of its bank, as plain values: figures, limits with their citation, derating rules. */
package org.stillrail.electrical.requirement;
