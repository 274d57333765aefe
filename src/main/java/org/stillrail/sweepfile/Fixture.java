package org.stillrail.sweepfile;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How the part was connected to the instrument, which decides how the data become an impedance. */
public enum Fixture {

    /** One port: the part ends the line, S11 is read. */
    REFLECTION("reflection"),
    /** Two ports: the part lies from the line to ground, S21 is read. Suits impedances well under the reference. */
    SHUNT_THROUGH("shunt-through"),
    /** Two ports: the part lies in the line, S21 is read. Suits impedances well over the reference. */
    SERIES_THROUGH("series-through"),
    /** The data are an impedance already. */
    IMPEDANCE("impedance");

    private final String label;

    Fixture(String label) {
        this.label = label;
    }

    /** The name in forms and in the calculation API. */
    public String label() {
        return label;
    }

    /** @throws IllegalArgumentException listing the names that exist */
    public static Fixture of(String label) {
        return Arrays.stream(values())
                .filter(fixture -> fixture.label.equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("fixture must be one of "
                        + Arrays.stream(values()).map(Fixture::label).collect(Collectors.joining(", "))
                        + ", not '" + label + "'"));
    }

    boolean isThrough() {
        return this == SHUNT_THROUGH || this == SERIES_THROUGH;
    }
}
