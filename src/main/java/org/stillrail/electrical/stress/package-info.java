/** What a bank's parts have to bear: ripple current, heat, life, reverse voltage, start-up, stored energy. Plain values. */
package org.stillrail.electrical.stress;
