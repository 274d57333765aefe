package org.stillrail.electrical.spread;

import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;

/**
 * How far the conditions of a rail may be from nominal. Shares are plus and minus.
 *
 * @param nominalV            of the output: the parts' DC bias
 * @param referenceShare      accuracy of the output voltage
 * @param inputMinimumV       with nominal and maximum; equal where the input is fixed
 * @param inductanceShare     tolerance of the inductor
 * @param saturationShare     inductance left at peak current, above 0, at most 1; 1 where it is not known
 * @param switchingShare      tolerance of the switching frequency
 * @param mostRippleInput     from which the converter makes the most ripple current
 * @param ambientMinimumC     with nominal and maximum; all equal where only one is known
 */
public record RailSpread(
        double nominalV, double referenceShare, double inputMinimumV, double inputNominalV, double inputMaximumV, double inductanceShare,
        double saturationShare, double switchingShare, Axis mostRippleInput, double ambientMinimumC, double ambientNominalC, double ambientMaximumC) {

    public RailSpread {
        Require.finite("nominalV", nominalV);
        share("referenceShare", referenceShare);
        ascending("input", inputMinimumV, inputNominalV, inputMaximumV);
        share("inductanceShare", inductanceShare);
        Require.positive("saturationShare", saturationShare);
        if (saturationShare > 1) {
            throw new IllegalArgumentException("saturationShare must be at most 1, not " + saturationShare);
        }
        share("switchingShare", switchingShare);
        ascending("ambient", ambientMinimumC, ambientNominalC, ambientMaximumC);
    }

    /**
     * What a rail says of itself. The inductor of a buck ripples most from the highest input; a rectifier conducts the shorter, and so the
     * more, the lower the input is. A drawn current is the same from every input. Without a window its output voltage is exact, without an ambient it stands at 25 degC.
     */
    public static RailSpread of(RailFigures rail) {
        InputRange input = rail.converter().topology() == Topology.DRAWN ? InputRange.fixed(rail.input().nominalV()) : rail.input();
        ConverterFigures converter = rail.converter();
        double accuracy = rail.window() == null ? 0 : rail.window().setPointAccuracyV() / Math.abs(rail.nominalVoltageV());
        double warmthC = OperatingPoint.REFERENCE.temperatureC();
        Ambient ambient = rail.ambient() == null ? new Ambient(warmthC, warmthC, warmthC, null) : rail.ambient();
        return new RailSpread(rail.nominalVoltageV(), accuracy, input.minimumV(), input.nominalV(), input.maximumV(),
                converter.inductanceTolerancePercent() / 100, converter.saturationShare(),
                converter.switchingTolerancePercent() / 100, converter.topology() == Topology.BUCK ? Axis.HIGH : Axis.LOW, ambient.minimumC(), ambient.nominalC(), ambient.maximumC());
    }

    private static void share(String name, double value) {
        if (!(value >= 0) || value >= 1) {
            throw new IllegalArgumentException(name + " must be from 0 to below 1, not " + value);
        }
    }

    private static void ascending(String name, double minimum, double nominal, double maximum) {
        if (!(minimum <= nominal && nominal <= maximum) || !Double.isFinite(minimum) || !Double.isFinite(maximum)) {
            throw new IllegalArgumentException(name + " must have minimum <= nominal <= maximum, not "
                    + minimum + ", " + nominal + ", " + maximum);
        }
    }
}
