package org.stillrail.library;

import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Drift;
import org.stillrail.electrical.capacitor.ResistanceCurve;

/**
 * How a part changes, as drawn in its datasheet or measured; null where nothing is known.
 *
 * @param capacitanceOverBias        share of the capacitance over DC bias in V
 * @param capacitanceOverTemperature share over temperature in degC; overrides what the class code promises
 * @param ageing                     overrides what is usual for the class code
 * @param resistance                 ESR over temperature
 * @param endOfLife                  what the datasheet calls the end of life
 * @param rippleOverFrequency        ripple rating over frequency in Hz, relative to its reference frequency
 * @param rippleOverTemperature      ripple rating over ambient in degC, relative to its reference temperature
 */
public record PartCharacteristics(
        CharacteristicCurve capacitanceOverBias, CharacteristicCurve capacitanceOverTemperature, Ageing ageing, ResistanceCurve resistance,
        Drift endOfLife, CharacteristicCurve rippleOverFrequency, CharacteristicCurve rippleOverTemperature) {

    public static final PartCharacteristics UNKNOWN = new PartCharacteristics(null, null, null, null, null, null, null);
}
