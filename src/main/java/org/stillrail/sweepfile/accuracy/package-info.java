/**
 * How far a measured impedance can be trusted: compensation of the fixture, what the instrument's accuracy makes of |Z| and of
 * the resistance, the impedances that a fixture suits, and the ground loop of the cable shields.
 */
package org.stillrail.sweepfile.accuracy;
