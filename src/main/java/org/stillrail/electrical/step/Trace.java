package org.stillrail.electrical.step;

/** What is kept of a response while it is being computed: extrema, the last time outside the band, and the samples. */
final class Trace {

    private static final int HALVINGS = 50;
    private static final double ROUNDING = 1e-14;

    private final double[] timeS;
    private final double[] deviationV;
    private final double[] inductorA;
    private final double settledV;
    private final double bandV;
    private int filled = 1;
    private double lowestV;
    private double highestV;
    private double lowestAtS;
    private double highestAtS;
    private double lastOutsideS = -1;
    private double endV;
    private Swings swings;

    /**
     * @param settledV the deviation that the response settles at
     * @param bandV    round that; positive infinity for none
     */
    Trace(int samples, double durationS, double initialInductorA, double settledV, double bandV) {
        this.timeS = new double[samples];
        this.deviationV = new double[samples];
        this.inductorA = new double[samples];
        for (int i = 0; i < samples; i++) {
            timeS[i] = durationS * i / (samples - 1);
        }
        inductorA[0] = initialInductorA;
        this.settledV = settledV;
        this.bandV = bandV;
    }

    /** The next stretch of the response; both curves begin where the last ended, or after a jump from there. */
    void add(Segment voltage, Segment inductor, double inductorOffsetA) {
        extreme(voltage.startS(), voltage.value0());
        if (swings != null) {
            swings.add(voltage);
        }
        double[] turns = voltage.turningFractions();
        for (double fraction : turns) {
            extreme(voltage.startS() + fraction * voltage.lengthS(), voltage.at(fraction));
        }
        extreme(voltage.endS(), voltage.value1());
        markOutside(voltage, turns);
        endV = voltage.value1();
        while (filled < timeS.length && reaches(voltage.endS())) {
            double fraction = Math.min(1, Math.max(0, (timeS[filled] - voltage.startS()) / voltage.lengthS()));
            deviationV[filled] = voltage.at(fraction);
            inductorA[filled] = inductorOffsetA + inductor.at(fraction);
            filled++;
        }
    }

    /** A sample at a jump takes the value after it, the last one the end, whose time may be rounded to a little earlier. */
    private boolean reaches(double endS) {
        return timeS[filled] < endS || filled == timeS.length - 1 && timeS[filled] <= endS * (1 + ROUNDING);
    }

    /** Follows every swing of the voltage from now on. */
    void follow(Swings newSwings) {
        swings = newSwings;
    }

    double[] timeS() {
        return timeS;
    }

    double[] deviationV() {
        return deviationV;
    }

    double[] inductorA() {
        return inductorA;
    }

    double undershootV() {
        return Math.max(0, -lowestV);
    }

    double overshootV() {
        return Math.max(0, highestV);
    }

    Double undershootAtS() {
        return lowestV < 0 ? lowestAtS : null;
    }

    Double overshootAtS() {
        return highestV > 0 ? highestAtS : null;
    }

    Double settledAtS() {
        return Double.isInfinite(bandV) || Math.abs(endV - settledV) > bandV ? null : (Double) Math.max(0, lastOutsideS);
    }

    private void extreme(double atS, double v) {
        if (v < lowestV) {
            lowestV = v;
            lowestAtS = atS;
        }
        if (v > highestV) {
            highestV = v;
            highestAtS = atS;
        }
    }

    /** Looks from the end for the last instant outside the band; between turning points the curve runs one way. */
    private void markOutside(Segment voltage, double[] turns) {
        double to = 1;
        for (int i = turns.length; i >= 0; i--) {
            double from = i == 0 ? 0 : turns[i - 1];
            if (outside(voltage, to)) {
                lastOutsideS = voltage.startS() + to * voltage.lengthS();
                return;
            }
            if (outside(voltage, from)) {
                double a = from;
                double b = to;
                for (int k = 0; k < HALVINGS; k++) {
                    double middle = (a + b) / 2;
                    if (outside(voltage, middle)) {
                        a = middle;
                    } else {
                        b = middle;
                    }
                }
                lastOutsideS = voltage.startS() + b * voltage.lengthS();
                return;
            }
            to = from;
        }
    }

    private boolean outside(Segment voltage, double fraction) {
        return Math.abs(voltage.at(fraction) - settledV) > bandV;
    }
}
