/** A bank's prediction held against what the bench measured: error by band, and the mounting that closes the gap. Plain Java. */
package org.stillrail.electrical.bench;
