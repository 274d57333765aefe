package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.converter.Converter;

/** The response of a bank and its converter, or of the bank alone, to a load step in the averaged model. */
public final class LoadStep {

    /** An extremum smaller than this share of the other is not spoken of. */
    private static final double NEGLIGIBLE = 1e-9;

    private LoadStep() {
    }

    /** Series-R-L-C branches exactly, others by their equivalent around the crossover. */
    public static StepResult of(StepRequest request) {
        return of(request, new SeriesEquivalent());
    }

    /**
     * @throws StepRefusedException where there is no steady state to start from, or the response runs away
     * @throws StepBudgetException  where the response holds more detail than one call may compute
     */
    public static StepResult of(StepRequest request, BranchRealisation realisation) {
        return of(request, realisation, Closeness.FULL);
    }

    /** The same, followed less closely. */
    public static StepResult of(StepRequest request, BranchRealisation realisation, Closeness closeness) {
        return walk(request, LoadCourse.of(request.load()), BankEquations.of(request, realisation), closeness, null).result();
    }

    /** The request's step and its way back; where neither meets a limit the second costs nothing. */
    public static ThereAndBack thereAndBack(StepRequest request, BranchRealisation realisation, Closeness closeness) {
        BankEquations bank = BankEquations.of(request, realisation);
        Walk there = walk(request, LoadCourse.of(request.load()), bank, closeness, null);
        StepRequest back = request.back();
        LoadCourse course = LoadCourse.of(back.load());
        Circuit circuit = bank.circuit(back.converter(), course.fromA());
        if (!there.simulation().mirrorsWithin(circuit.lowest(), circuit.highest())) {
            return new ThereAndBack(there.result(), walk(back, course, bank, closeness, null).result());
        }
        StepResult mirrored = there.result().mirrored(request.load().fromA(), request.load().toA());
        return new ThereAndBack(there.result(), mirrored.withWarnings(warnings(back, course, mirrored, bank)));
    }

    /** The same where the load goes along {@code course} instead of the request's ramp. */
    public static StepResult along(LoadCourse course, StepRequest request, BranchRealisation realisation) {
        return walk(request, course, BankEquations.of(request, realisation), Closeness.FULL, null).result();
    }

    /** @param swings filled with the turning points of the deviation */
    static StepResult following(StepRequest request, BranchRealisation realisation, Swings swings) {
        return walk(request, LoadCourse.of(request.load()), BankEquations.of(request, realisation), Closeness.FULL, swings).result();
    }

    private record Walk(StepSimulation simulation, StepResult result) {
    }

    private static Walk walk(StepRequest request, LoadCourse load, BankEquations bank, Closeness closeness, Swings swings) {
        Converter converter = request.converter();
        Circuit circuit = bank.circuit(converter, load.fromA());
        if (request.limited() && circuit.isVoltageMode()) {
            requireSteadyState(circuit.steadyDuty(load.fromA()), load.fromA());
        }
        double settledV = converter == null ? 0 : -converter.loadLineOhm() * load.deviationA(load.corners() - 1);
        Trace trace = new Trace(request.samples(), request.durationS(), load.fromA(), settledV,
                request.settleBandV() == null ? Double.POSITIVE_INFINITY : request.settleBandV());
        if (swings != null) {
            trace.follow(swings);
        }
        double nominalV = converter == null ? 1 : converter.stage().outputV();
        StepSimulation simulation = new StepSimulation(
                circuit, load, request.durationS(), request.limited(), nominalV, closeness.looser(), trace);
        simulation.run();
        StepResult result = new StepResult(trace.timeS(), trace.deviationV(), trace.inductorA(), trace.undershootV(), trace.overshootV(),
                trace.undershootAtS(), trace.overshootAtS(), trace.settledAtS(), simulation.metLimit(), bank.fitErrorPercent(), bank.replaced(), List.of());
        return new Walk(simulation, result.withWarnings(warnings(request, load, result, bank)));
    }

    private static void requireSteadyState(double duty, double fromA) {
        if (!(duty >= 0 && duty <= 1)) {
            throw new StepRefusedException(String.format(Locale.ROOT, "load.fromA of %.6g A has no steady state: it needs a"
                    + " duty of %.4g, outside 0 to 1", fromA, duty));
        }
    }

    private static List<String> warnings(StepRequest request, LoadCourse load, StepResult result, BankEquations bank) {
        List<String> warnings = new ArrayList<>(bank.warnings());
        if (load.endS() > request.durationS()) {
            warnings.add("The load does not reach toA within durationS; slewAPerS is too low for that");
        }
        if (request.converter() == null) {
            warnings.add("Without a converter the source's current stays at fromA, so the deviation grows with durationS");
            return warnings;
        }
        double periodS = 1 / request.converter().stage().switchingHz();
        if (result.undershootV() > NEGLIGIBLE * result.overshootV()) {
            early(result.undershootAtS(), "undershoot", periodS, warnings);
        }
        if (result.overshootV() > NEGLIGIBLE * result.undershootV()) {
            early(result.overshootAtS(), "overshoot", periodS, warnings);
        }
        return warnings;
    }

    private static void early(Double atS, String name, double periodS, List<String> warnings) {
        if (atS != null && atS < periodS) {
            warnings.add(String.format(Locale.ROOT, "The %s comes after %.3g s, within one switching period of %.3g s, which an"
                    + " averaged model cannot see", name, atS, periodS));
        }
    }
}
