package org.stillrail.electrical.spread;

import java.util.List;

/**
 * Figures of random banks that need more than their impedance, worked out by whoever knows parts and rail. Asked by several threads
 * at once; the answer depends on the arguments alone.
 */
public interface FurtherFigures {

    List<DrawnFigure> figures();

    /**
     * In the order of {@link #figures}; not a number where there is none, which keeps no limit.
     *
     * @param rippleV peak to peak of this bank; not a number where it is not known
     */
    double[] of(Strays strays, double rippleV);
}
