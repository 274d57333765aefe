package org.stillrail.electrical.capacitor;

/**
 * What is assumed of a part where its datasheet is silent, by technology. Round figures of common practice, no source; every
 * use of one is marked as an estimate.
 */
public final class Estimates {

    private Estimates() {
    }

    /** Equivalent series inductance in H of a usual case. */
    public static double inductanceH(Technology technology) {
        return switch (technology) {
            case WET_ALUMINIUM -> 12e-9;
            case POLYMER_ALUMINIUM, HYBRID -> 4e-9;
            case TANTALUM_MNO2, TANTALUM_POLYMER -> 2e-9;
            case CERAMIC_CLASS_1, CERAMIC_CLASS_2 -> 0.6e-9;
            case FILM -> 8e-9;
            case DOUBLE_LAYER -> 20e-9;
        };
    }

    /** Loss tangent at {@link #lossTangentFrequencyHz}. */
    public static double lossTangent(Technology technology) {
        return switch (technology) {
            case WET_ALUMINIUM -> 0.2;
            case POLYMER_ALUMINIUM, TANTALUM_POLYMER -> 0.1;
            case HYBRID -> 0.14;
            case TANTALUM_MNO2 -> 0.08;
            case CERAMIC_CLASS_1 -> 0.001;
            case CERAMIC_CLASS_2 -> 0.025;
            case FILM -> 0.001;
            case DOUBLE_LAYER -> 0.5;
        };
    }

    /** The frequency at which a technology's capacitance and loss tangent are usually stated, in Hz. */
    public static double lossTangentFrequencyHz(Technology technology) {
        return switch (technology) {
            case WET_ALUMINIUM, POLYMER_ALUMINIUM, HYBRID, TANTALUM_MNO2, TANTALUM_POLYMER -> 120;
            case CERAMIC_CLASS_1 -> 1e6;
            case CERAMIC_CLASS_2, FILM -> 1e3;
            case DOUBLE_LAYER -> 0.1;
        };
    }
}
