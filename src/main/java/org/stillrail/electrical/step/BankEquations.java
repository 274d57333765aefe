package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.PowerStage;

/**
 * The bank of a request as equations in time.
 *
 * @param near            at the converter's node
 * @param far             null for one node
 * @param fitErrorPercent worst branch, null where the bank is exact
 * @param replaced        labels of branches that an equivalent stands in for
 * @param warnings        of the branches
 */
record BankEquations(
        List<AdmittanceStateSpace> near, FarNode far, Propagators propagators, Double fitErrorPercent, List<String> replaced, List<String> warnings) {

    static BankEquations of(StepRequest request, BranchRealisation realisation) {
        List<AdmittanceStateSpace> near = new ArrayList<>();
        List<AdmittanceStateSpace> beyond = new ArrayList<>();
        List<String> replaced = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
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
        return new BankEquations(near, far, realisation.propagators(), fitErrorPercent, replaced, warnings);
    }

    /** @param converter null for the bank alone */
    Circuit circuit(Converter converter, double fromA) {
        return new Circuit(near, far, converter, fromA, propagators);
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
