package org.stillrail.electrical.step;

/** How closely the curves of a response are followed. */
public enum Closeness {

    FULL(1),
    /** Deviations to a ten-thousandth or better in half the time: for the many corners and variations of a bank. */
    QUICK(100),
    /** Deviations to some thousandths: to see which of many conditions matter, not for a figure. */
    ROUGH(1000);

    private final double looser;

    Closeness(double looser) {
        this.looser = looser;
    }

    /** So many times less closely than in full. */
    double looser() {
        return looser;
    }
}
