package org.stillrail.electrical.evaluation;

/**
 * One side of the voltage window and what fills it, in V, all positive.
 *
 * @param allowedV    the window on this side
 * @param setPointV   set-point accuracy
 * @param regulationV line and load regulation
 * @param halfRippleV half the peak-to-peak ripple
 * @param stepV       overshoot above, undershoot below
 */
public record WindowSide(double allowedV, double setPointV, double regulationV, double halfRippleV, double stepV) {

    public double totalV() {
        return setPointV + regulationV + halfRippleV + stepV;
    }

    /** Negative where the shares do not fit. */
    public double leftV() {
        return allowedV - totalV();
    }
}
