package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.VoltageWindow;

/** The voltage ruler at one corner: the shares of the window above and below nominal. */
public record WindowShares(String corner, WindowSide plus, WindowSide minus) {

    static WindowShares of(String corner, VoltageWindow window, double ripplePeakToPeakV, double overshootV, double undershootV) {
        return new WindowShares(corner,
                new WindowSide(window.plusV(), window.setPointAccuracyV(), window.regulationV(), ripplePeakToPeakV / 2, overshootV),
                new WindowSide(window.minusV(), window.setPointAccuracyV(), window.regulationV(), ripplePeakToPeakV / 2, undershootV));
    }

    /** The side with less left of its window, relative to it. */
    WindowSide worse() {
        return plus.leftV() / plus.allowedV() < minus.leftV() / minus.allowedV() ? plus : minus;
    }
}
