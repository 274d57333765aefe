package org.stillrail.electrical.bank;

import org.stillrail.electrical.capacitor.Require;

/** Resistance and inductance in series with parts: a mounting or a shared piece of copper. */
public record SeriesPath(double resistanceOhm, double inductanceH) {

    public static final SeriesPath NONE = new SeriesPath(0, 0);

    public SeriesPath {
        Require.notNegative("resistanceOhm", resistanceOhm);
        Require.notNegative("inductanceH", inductanceH);
    }
}
