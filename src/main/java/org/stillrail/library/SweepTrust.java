package org.stillrail.library;

import java.util.List;
import org.stillrail.sweepfile.accuracy.ImpedanceUncertainty;
import org.stillrail.web.ChartData.Band;

/**
 * How far a measured curve can be trusted.
 *
 * @param untrusted      where |Z| is not known to within a tenth, as bands of a chart
 * @param shieldErrorOhm of the cable shields at each point, not a number where it is far below |Z|; null where it is not given
 * @param words          in sentences
 */
public record SweepTrust(ImpedanceUncertainty uncertainty, List<Band> untrusted, double[] shieldErrorOhm, List<String> words) {

    /** Whether |Z| is known at a point to within a tenth. */
    public boolean isMagnitudeKnown(int index) {
        return uncertainty.relativeMagnitude(index) <= Trust.LIMIT;
    }

    public boolean isResistanceKnown(int index) {
        return uncertainty.isResistanceKnown(index);
    }
}
