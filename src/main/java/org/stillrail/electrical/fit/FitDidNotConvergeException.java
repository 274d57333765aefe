package org.stillrail.electrical.fit;

/** No rational function was found that may stand for the points; the message says how near the best one came. */
public final class FitDidNotConvergeException extends RuntimeException {

    private final int order;
    private final double rmsRelativeErrorPercent;

    FitDidNotConvergeException(int order, double rmsRelativeErrorPercent) {
        super(String.format(java.util.Locale.ROOT,
                "The fit did not converge: the best of all orders, %d, leaves an rms error of %.3g %% of |Z|",
                order, rmsRelativeErrorPercent));
        this.order = order;
        this.rmsRelativeErrorPercent = rmsRelativeErrorPercent;
    }

    /** Order of the best attempt. */
    public int order() {
        return order;
    }

    public double rmsRelativeErrorPercent() {
        return rmsRelativeErrorPercent;
    }
}
