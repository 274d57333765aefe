/** Periodic currents of converters, and the voltage and heat that they make in a bank. */
package org.stillrail.electrical.ripple;
