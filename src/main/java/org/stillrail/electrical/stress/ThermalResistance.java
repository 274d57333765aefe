package org.stillrail.electrical.stress;

import org.stillrail.electrical.capacitor.Require;

/**
 * From the hottest place of a part to the air round it.
 *
 * <p>Where no datasheet tells, it is estimated from the case: {@code 1 / (beta S)} with S the surface in cm2 without the
 * bottom and {@code beta = 2.3e-3 S^-0.2 W / (K cm2)}, a rule of makers' notes for cans in still air (from memory). Chips
 * lose most of their heat through their lands, which the rule leaves out: for them it is an upper estimate.
 *
 * @param estimated whether it stands in for a figure that nobody gave
 * @param source    in words
 */
public record ThermalResistance(double kelvinPerWatt, boolean estimated, String source) {

    private static final double BETA_AT_ONE_CM2 = 2.3e-3;
    private static final double BETA_EXPONENT = -0.2;
    private static final double CM2_PER_M2 = 1e4;
    private static final String RULE = "estimated from the case surface in still air";

    public ThermalResistance {
        Require.positive("kelvinPerWatt", kelvinPerWatt);
    }

    public static ThermalResistance given(double kelvinPerWatt, String source) {
        return new ThermalResistance(kelvinPerWatt, false, source);
    }

    /** Of an upright can. */
    public static ThermalResistance ofCan(double diameterM, double heightM) {
        Require.positive("diameterM", diameterM);
        Require.positive("heightM", heightM);
        return ofSurface(Math.PI / 4 * diameterM * (diameterM + 4 * heightM));
    }

    /** Of a block that lies on its largest side or stands on another: {@code heightM} is what it rises over the board. */
    public static ThermalResistance ofBlock(double lengthM, double widthM, double heightM) {
        Require.positive("lengthM", lengthM);
        Require.positive("widthM", widthM);
        Require.positive("heightM", heightM);
        return ofSurface(lengthM * widthM + 2 * heightM * (lengthM + widthM));
    }

    private static ThermalResistance ofSurface(double surfaceM2) {
        double cm2 = surfaceM2 * CM2_PER_M2;
        double beta = BETA_AT_ONE_CM2 * Math.pow(cm2, BETA_EXPONENT);
        return new ThermalResistance(1 / (beta * cm2), true, RULE);
    }
}
