package org.stillrail.library;

import java.util.List;
import org.stillrail.sweepfile.accuracy.ImpedanceUncertainty;

/** How far a measured curve can be trusted. @param words in sentences */
public record SweepTrust(ImpedanceUncertainty uncertainty, List<String> words) {
}
