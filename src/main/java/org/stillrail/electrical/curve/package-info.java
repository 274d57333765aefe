/** Frequency grids and complex curves over them: the values that every other calculation passes on. */
package org.stillrail.electrical.curve;
