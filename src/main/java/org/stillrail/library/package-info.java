/** The team's shared parts: datasheet figures, measured sweeps with their provenance, vetting, and the model that a part lends to banks. */
package org.stillrail.library;
