/**
 * Measured and tabulated impedances as rational functions of frequency: vector fitting, passivity, state space, and the
 * Kramers-Kronig check. {@link org.stillrail.electrical.fit.VectorFitting} is the way in.
 */
package org.stillrail.electrical.fit;
