package org.stillrail.electrical.evaluation;

import java.math.BigDecimal;
import java.util.List;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.BleedResistor;
import org.stillrail.electrical.requirement.Citation;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.Life;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Space;
import org.stillrail.electrical.requirement.StartUpRamp;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.VoltageWindow;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.electrical.stress.ThermalResistance;

/** A rail of 3.3 V from 12 V that everything is asked of, and banks for it; each test changes what it is about. */
final class Rails {

    static final Citation CITATION = new Citation("Board requirements", "B", "4.2");
    static final double SWITCHING_HZ = 500e3;
    static final double OUTPUT_V = 3.3;

    private Rails() {
    }

    static ControlFigures placed(double crossoverHz, double marginDeg) {
        return new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, null, null, null, crossoverHz, marginDeg);
    }

    static ConverterFigures converter(ControlFigures control) {
        return new ConverterFigures(Topology.BUCK, 2.2e-6, 0, 0.01, 1, SWITCHING_HZ, 0, control, 15.0);
    }

    static ConverterFigures converter(Topology topology) {
        return new ConverterFigures(topology, 2.2e-6, 0, 0.01, 1, SWITCHING_HZ, 0, placed(40e3, 60), 15.0);
    }

    /** Primary inductance of 60 uH, four primary turns to one secondary, 200 kHz. */
    static ConverterFigures flyback(Double turnsRatio, Double edgeS) {
        return new ConverterFigures(Topology.FLYBACK, 60e-6, 0, 0.05, 1, 200e3, 0, placed(5e3, 60), null, turnsRatio, edgeS, null, null);
    }

    static Judgement verdicts(EvaluationInput input) {
        List<Judgement.Looked> looked = Fitting.of(input).stream().map(fitting -> new Judgement.Looked(fitting, Corner.of(fitting))).toList();
        return Judgement.of(input, looked, looked.get(0).corners().get(0));
    }

    /** Tolerances of the converter are left to the tests that are about them. */
    static RailFigures everything() {
        return new RailFigures(OUTPUT_V, 5, new InputRange(9, 12, 15), converter(placed(40e3, 60)),
                new RippleLimit(0.03, CITATION), new VoltageWindow(0.165, 0.165, 0.033, 0.01, CITATION),
                new LoadStep(1, 5, 10e6, 0.1, CITATION), null, new Ambient(-20, 25, 60, CITATION), null, null);
    }

    static RailFigures rippleOnly(double limitV) {
        return new RailFigures(OUTPUT_V, 5, InputRange.fixed(12), converter((ControlFigures) null), new RippleLimit(limitV, CITATION), null, null,
                null, null, null, null);
    }

    static RailFigures with(RailFigures rail, ConverterFigures converter) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), converter, rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, InputRange input) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), input, rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, RippleLimit ripple) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), ripple, rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, VoltageWindow window) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), window,
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, LoadStep step) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                step, rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, EsrWindow esr) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), esr, rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, Ambient ambient) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), ambient, rail.life(), rail.space(), rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, Space space) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), space, rail.startUp(), rail.bleed());
    }

    static RailFigures with(RailFigures rail, StartUpRamp startUp) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), startUp, rail.bleed());
    }

    static RailFigures with(RailFigures rail, BleedResistor bleed) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), bleed);
    }

    static RailFigures withLife(RailFigures rail, double hours) {
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(),
                rail.loadStep(), rail.esrWindow(), rail.ambient(), new Life(hours, CITATION), rail.space(), rail.startUp(), rail.bleed());
    }

    static BranchInput part(String label, int count, Technology technology, double ratedV, ImpedanceModel model) {
        return new BranchInput(label, count, "TEST-" + label, technology, ratedV, PartInput.fixed(model), SeriesPath.NONE, SeriesPath.NONE,
                "datasheet: test figures", false).withSize(2e-3, 10e-6, new BigDecimal("0.35")).withRatings(ratings(technology));
    }

    /** Enough for every test that is not about them. */
    static RatingInput ratings(Technology technology) {
        RippleRating ripple = technology.polar() ? new RippleRating(3, null, null) : null;
        return new RatingInput(null, 125.0, ripple, 105.0, ThermalResistance.given(30, "test figures"), LifeRating.of(5000, 105));
    }

    static BranchInput inline(String label, int count, double capacitanceF, double resistanceOhm, double inductanceH) {
        return new BranchInput(label, count, null, null, null, PartInput.fixed(new SeriesRlc(capacitanceF, resistanceOhm, inductanceH)),
                SeriesPath.NONE, SeriesPath.NONE, "typed", false);
    }

    static BranchInput polymer(int count) {
        return part("polymer", count, Technology.POLYMER_ALUMINIUM, 6.3, new SeriesRlc(220e-6, 0.012, 3e-9));
    }

    static BranchInput ceramic(int count) {
        return part("ceramic", count, Technology.CERAMIC_CLASS_2, 10, new SeriesRlc(15e-6, 0.003, 0.7e-9));
    }

    /** Two polymer parts and four ceramics, which meet {@link #everything()}. */
    static EvaluationInput sound() {
        return input(everything(), polymer(2), ceramic(4));
    }

    static EvaluationInput input(RailFigures rail, BranchInput... branches) {
        return new EvaluationInput(EvaluationInput.METHOD_VERSION, rail, List.of(branches));
    }

    static ImpedanceModel datasheet(double c, double tangent, double r, double l) {
        return DatasheetModel.of(new LossFigures(c, tangent, 120, r, 100e3), l);
    }
}
