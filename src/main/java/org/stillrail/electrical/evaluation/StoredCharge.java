package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.BleedResistor;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.stress.BankCharge;
import org.stillrail.electrical.stress.Bleed;
import org.stillrail.electrical.stress.SafeVoltage;

/**
 * What a bank holds at the highest voltage of its rail, at the corner of the most energy, and how it is emptied.
 *
 * @param chargedV     the rail's nominal voltage and the accuracy of its reference
 * @param capacitanceF small-signal, of all parts at that voltage
 * @param unbiasedF    without bias
 * @param bleed        null where no resistor is stated
 */
public record StoredCharge(
        String corner, double chargedV, double capacitanceF, double unbiasedF, double chargeC, double energyJ, Bleed bleed) {

    static StoredCharge of(Judgement judged) {
        RailFigures rail = judged.input().rail();
        double chargedV = Math.abs(rail.nominalVoltageV()) + VoltageRatingJudge.accuracyV(rail);
        Corner most = null;
        BankCharge mostCharge = null;
        double mostJ = 0;
        for (Verdicts fitted : judged.fittings()) {
            for (CornerFigures each : fitted.figures()) {
                BankCharge charge = BankHolding.of(fitted.fitting().input(), each.corner(), chargedV);
                double energyJ = charge.energyJ(chargedV);
                if (most == null || energyJ > mostJ) {
                    mostJ = energyJ;
                    most = each.corner();
                    mostCharge = charge;
                }
            }
        }
        return new StoredCharge(most.name(), chargedV, mostCharge.capacitanceF(chargedV), mostCharge.capacitanceF(0), mostCharge.chargeC(chargedV),
                mostJ, bleed(rail.bleed(), mostCharge, chargedV));
    }

    private static Bleed bleed(BleedResistor resistor, BankCharge charge, double chargedV) {
        if (resistor == null) {
            return null;
        }
        SafeVoltage safe = resistor.safeV() == null ? null : new SafeVoltage(resistor.safeV(), "as the rail states");
        return Bleed.of(charge, chargedV, resistor.resistanceOhm(), safe);
    }
}
