package org.stillrail.electrical.ripple;

/**
 * A voltage over one period with zero mean: its exact peak-to-peak value, and samples evenly spaced from t = 0 for drawing.
 * At a jump the sample is the value just after it.
 */
public final class Waveform {

    private final double periodS;
    private final double peakToPeakV;
    private final double[] voltage;

    Waveform(double periodS, double peakToPeakV, double[] voltage) {
        this.periodS = periodS;
        this.peakToPeakV = peakToPeakV;
        this.voltage = voltage;
    }

    /** Highest minus lowest of the exact waveform, with both limits at every jump; not of the samples. */
    public double peakToPeakV() {
        return peakToPeakV;
    }

    public double periodS() {
        return periodS;
    }

    public int size() {
        return voltage.length;
    }

    public double timeS(int index) {
        return periodS * index / voltage.length;
    }

    public double voltageV(int index) {
        return voltage[index];
    }

    /** A copy. */
    public double[] timesS() {
        double[] times = new double[voltage.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = timeS(i);
        }
        return times;
    }

    /** A copy. */
    public double[] voltagesV() {
        return voltage.clone();
    }
}
