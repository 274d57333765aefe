/** The bulk that damps a ceramic bank best, and where a present bank lies beside it. */
package org.stillrail.electrical.damping;
