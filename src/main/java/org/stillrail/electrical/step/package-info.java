/** The load step in time: a bank and its converter as a state space, propagated exactly, with duty limits and delay. */
package org.stillrail.electrical.step;
