package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.PowerStage;

/** The response of a bank and its converter, or of the bank alone, to a load step in the averaged model. */
public final class LoadStep {

    /** An extremum smaller than this share of the other is not spoken of. */
    private static final double NEGLIGIBLE = 1e-9;

    /** The quick step follows the curves so many times less closely, the rough one even less. */
    private static final double QUICK = 100;
    private static final double ROUGH = 1000;

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
        return of(request, LoadCourse.of(request.load()), realisation, 1, null);
    }

    /** Deviations to a ten-thousandth or better in half the time: for the many corners and variations of a bank. */
    public static StepResult quick(StepRequest request, BranchRealisation realisation) {
        return of(request, LoadCourse.of(request.load()), realisation, QUICK, null);
    }

    /** Deviations to some thousandths: to see which of many conditions matter, not for a figure. */
    public static StepResult rough(StepRequest request, BranchRealisation realisation) {
        return of(request, LoadCourse.of(request.load()), realisation, ROUGH, null);
    }

    /** The same where the load goes along {@code course} instead of the request's ramp. */
    public static StepResult along(LoadCourse course, StepRequest request, BranchRealisation realisation) {
        return of(request, course, realisation, 1, null);
    }

    /** @param swings filled with the turning points of the deviation */
    static StepResult following(StepRequest request, BranchRealisation realisation, Swings swings) {
        return of(request, LoadCourse.of(request.load()), realisation, 1, swings);
    }

    private static StepResult of(StepRequest request, LoadCourse load, BranchRealisation realisation, double looser, Swings swings) {
        Converter converter = request.converter();
        List<String> warnings = new ArrayList<>();
        List<String> replaced = new ArrayList<>();
        List<AdmittanceStateSpace> near = new ArrayList<>();
        List<AdmittanceStateSpace> beyond = new ArrayList<>();
        Double fitErrorPercent = null;
        double aroundHz = realisation.asksFrequency() ? aroundHz(request) : Double.NaN;
        Distance distance = request.bank().distance();
        for (Branch branch : all(request.bank())) {
            RealisedBranch realised = realisation.realise(branch, aroundHz);
            (distance != null && branch.node() == Node.LOAD ? beyond : near).add(realised.space());
            if (realised.errorPercent() != null) {
                fitErrorPercent = Math.max(fitErrorPercent == null ? 0 : fitErrorPercent, realised.errorPercent());
            }
            if (realised.replaced()) {
                replaced.add(branch.label());
            }
            if (realised.warning() != null) {
                warnings.add(realised.warning());
            }
        }
        FarNode far = distance == null ? null : new FarNode(beyond, distance.path(), distance.sense() == Node.LOAD);
        Circuit circuit = new Circuit(near, far, converter, load.fromA(), realisation.propagators());
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
        new StepSimulation(circuit, load, request.durationS(), request.limited(), nominalV, looser, trace).run();
        warn(request, load, trace, warnings);
        return new StepResult(trace.timeS(), trace.deviationV(), trace.inductorA(), trace.undershootV(), trace.overshootV(),
                trace.undershootAtS(), trace.overshootAtS(), trace.settledAtS(), fitErrorPercent, replaced, warnings);
    }

    /** The branches, and at two nodes the fixed capacitance of the load. */
    private static List<Branch> all(Bank bank) {
        if (bank.distance() == null) {
            return bank.branches();
        }
        List<Branch> all = new ArrayList<>(bank.connectedTo(Node.CONVERTER));
        all.addAll(bank.connectedTo(Node.LOAD));
        return all;
    }

    private static void requireSteadyState(double duty, double fromA) {
        if (!(duty >= 0 && duty <= 1)) {
            throw new StepRefusedException(String.format(Locale.ROOT, "load.fromA of %.6g A has no steady state: it needs a"
                    + " duty of %.4g, outside 0 to 1", fromA, duty));
        }
    }

    private static void warn(StepRequest request, LoadCourse load, Trace trace, List<String> warnings) {
        if (load.endS() > request.durationS()) {
            warnings.add("The load does not reach toA within durationS; slewAPerS is too low for that");
        }
        if (request.converter() == null) {
            warnings.add("Without a converter the source's current stays at fromA, so the deviation grows with durationS");
            return;
        }
        double periodS = 1 / request.converter().stage().switchingHz();
        if (trace.undershootV() > NEGLIGIBLE * trace.overshootV()) {
            early(trace.undershootAtS(), "undershoot", periodS, warnings);
        }
        if (trace.overshootV() > NEGLIGIBLE * trace.undershootV()) {
            early(trace.overshootAtS(), "overshoot", periodS, warnings);
        }
    }

    private static void early(Double atS, String name, double periodS, List<String> warnings) {
        if (atS != null && atS < periodS) {
            warnings.add(String.format(Locale.ROOT, "The %s comes after %.3g s, within one switching period of %.3g s, which an"
                    + " averaged model cannot see", name, atS, periodS));
        }
    }

    /** Where a branch that is not exact has to be right: the crossover, or for a bank alone the reciprocal of the duration. */
    private static double aroundHz(StepRequest request) {
        Bank bank = request.bank();
        if (request.converter() == null || bank.branches().stream().allMatch(branch -> branch.part() instanceof SeriesRlc)) {
            return 1 / request.durationS();
        }
        PowerStage stage = request.converter().stage();
        Double crossoverHz = Loop.crossoverHz(bank, request.converter(), stage.switchingHz() / 1e5, stage.switchingHz());
        return crossoverHz == null ? stage.switchingHz() / 10 : crossoverHz;
    }
}
