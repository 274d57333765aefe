/** The physics of capacitor banks: plain Java on {@code double[]}, no framework, no SQL, no input or output. SI units throughout. */
package org.stillrail.electrical;
