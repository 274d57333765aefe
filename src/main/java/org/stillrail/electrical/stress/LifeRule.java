package org.stillrail.electrical.stress;

import java.util.Optional;
import org.stillrail.electrical.capacitor.Technology;

/** How the life of a technology goes with the temperature of its core, where a public rule says so. */
public enum LifeRule {

    /** Twice the life for each 10 K less: {@code L = L0 2^((T0 - T) / 10)}. */
    TEN_DEGREES("ten-degree rule", 2, 10),
    /** Ten times the life for each 20 K less: {@code L = L0 10^((T0 - T) / 20)}. */
    TWENTY_DEGREES("twenty-degree rule", 10, 20);

    private final String label;
    private final double factor;
    private final double stepK;

    LifeRule(String label, double factor, double stepK) {
        this.label = label;
        this.factor = factor;
        this.stepK = stepK;
    }

    public String label() {
        return label;
    }

    /** Life at a temperature over that at another that is {@code coolerK} higher. */
    public double factor(double coolerK) {
        return Math.pow(factor, coolerK / stepK);
    }

    /** Empty where no rule holds for the whole technology. */
    public static Optional<LifeRule> of(Technology technology) {
        return switch (technology) {
            case WET_ALUMINIUM, HYBRID, DOUBLE_LAYER -> Optional.of(TEN_DEGREES);
            case POLYMER_ALUMINIUM -> Optional.of(TWENTY_DEGREES);
            case TANTALUM_MNO2, TANTALUM_POLYMER, CERAMIC_CLASS_1, CERAMIC_CLASS_2, FILM -> Optional.empty();
        };
    }

    /** Where the rule for the technology comes from, and how well it is known. */
    public static String source(Technology technology) {
        return switch (technology) {
            case WET_ALUMINIUM -> "common rule, on public pages of makers, seen second-hand";
            case HYBRID -> "a public encyclopaedia says that hybrids age as wet aluminium does; seen second-hand";
            case DOUBLE_LAYER -> "a public page on double-layer capacitors, seen second-hand; its voltage term is left out";
            case POLYMER_ALUMINIUM -> "common rule of makers' notes, from memory";
            case TANTALUM_MNO2, TANTALUM_POLYMER, CERAMIC_CLASS_1, CERAMIC_CLASS_2, FILM -> "none";
        };
    }
}
