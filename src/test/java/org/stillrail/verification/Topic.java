package org.stillrail.verification;

import java.util.Locale;

/** The chapters of docs/verification.md, in their order. */
public enum Topic {
    IMPEDANCE("Impedance of a bank"),
    MODELS("Models of a part"),
    CHARACTERISTICS("Characteristics of a part"),
    RIPPLE("Waveforms and ripple"),
    LOOP("Loop"),
    STEP("Load step"),
    FIT("Rational fit"),
    DAMPING("Damping"),
    STRESS("Stress and life"),
    MOUNTING("Mounting and distance"),
    SPREAD("Corners and spread"),
    FILES("Sweep files and fixtures"),
    QUALITY("Quality of a measured curve");

    private final String title;

    Topic(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    /** Of its heading, as renderers of Markdown make it. */
    String anchor() {
        return title.toLowerCase(Locale.ROOT).replace(' ', '-');
    }
}
