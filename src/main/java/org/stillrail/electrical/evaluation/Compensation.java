package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorDesign;
import org.stillrail.electrical.converter.Control;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CurrentMode;
import org.stillrail.electrical.converter.LoopTarget;
import org.stillrail.electrical.converter.VoltageMode;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.RailFigures;

/**
 * The control of a rail's converter with its compensator: as given, or placed for the bank at the nominal corner.
 *
 * @param loadLineOhm of the rail, 0 for none
 * @param wantedHz the crossover that the compensator is placed for, null where it is given
 */
record Compensation(Control control, Compensator compensator, Double wantedHz, double loadLineOhm) {

    private static final double USUAL_DELAY_PERIODS = 0.5;

    /**
     * Refused where the wished crossover and margin cannot be had; the rail must have a control.
     *
     * @param bank at the nominal corner
     */
    static Tried<Compensation> of(RailFigures rail, Bank bank) {
        return Tried.of(() -> {
            ControlFigures figures = rail.converter().control();
            double loadLineOhm = rail.loadStep() == null ? 0 : rail.loadStep().droopV(1);
            Control control = control(figures, rail.converter().switchingHz());
            if (figures.given() != ControlFigures.Given.PLACED) {
                return new Compensation(control, figures.compensator(), null, loadLineOhm);
            }
            if (figures.crossoverHz() == null || figures.phaseMarginDeg() == null) {
                throw new IllegalArgumentException("The rail states neither a compensator nor a crossover with a phase margin");
            }
            LoopTarget target = new LoopTarget(figures.crossoverHz(), figures.phaseMarginDeg());
            return new Compensation(control, CompensatorDesign.place(bank, Corner.nominalStage(rail), control, target, loadLineOhm),
                    target.crossoverHz(), loadLineOhm);
        });
    }

    Converter at(Corner corner, RailFigures rail) {
        return new Converter(corner.stage(rail), control, compensator).withLoadLineOhm(loadLineOhm);
    }

    private static Control control(ControlFigures figures, double switchingHz) {
        if (figures.kind() == ControlFigures.Kind.VOLTAGE_MODE) {
            double delayS = figures.delayS() == null ? USUAL_DELAY_PERIODS / switchingHz : figures.delayS();
            return new VoltageMode(required("ramp", figures.rampV()), delayS);
        }
        double slope = figures.slopeAPerS() == null ? 0 : figures.slopeAPerS();
        return new CurrentMode(required("current-sense gain", figures.senseOhm()), slope);
    }

    private static double required(String name, Double value) {
        if (value == null) {
            throw new IllegalArgumentException("The rail's control has no " + name);
        }
        return value;
    }
}
