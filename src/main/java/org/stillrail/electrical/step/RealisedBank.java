package org.stillrail.electrical.step;

import java.util.HashMap;
import java.util.Map;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;

/** The branches of one bank, each brought into time once, for several steps of the same bank. For one thread. */
public final class RealisedBank implements BranchRealisation {

    private final Map<Branch, RealisedBranch> realised = new HashMap<>();
    private final Propagators propagators = new Propagators();
    private final BranchRealisation realisation;
    private final double aroundHz;

    private RealisedBank(BranchRealisation realisation, double aroundHz) {
        this.realisation = realisation;
        this.aroundHz = aroundHz;
    }

    /**
     * @param aroundHz where the response is decided
     * @throws IllegalArgumentException where a branch has no usable realisation, in words
     */
    public static RealisedBank of(Bank bank, BranchRealisation realisation, double aroundHz) {
        RealisedBank all = new RealisedBank(realisation, aroundHz);
        bank.branches().forEach(branch -> all.realise(branch, aroundHz));
        return all;
    }

    @Override
    public boolean asksFrequency() {
        return false;
    }

    @Override
    public Propagators propagators() {
        return propagators;
    }

    /** @param ignoredHz the bank's own frequency counts */
    @Override
    public RealisedBranch realise(Branch branch, double ignoredHz) {
        return realised.computeIfAbsent(branch, each -> realisation.realise(each, aroundHz));
    }
}
