package org.stillrail.electrical.requirement;

/** The converter's input voltage in V: least, nominal and most. */
public record InputRange(double minimumV, double nominalV, double maximumV) {

    public static InputRange fixed(double inputV) {
        return new InputRange(inputV, inputV, inputV);
    }
}
