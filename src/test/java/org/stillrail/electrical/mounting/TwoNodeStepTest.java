package org.stillrail.electrical.mounting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.step.FittedBranch;
import org.stillrail.electrical.step.Load;
import org.stillrail.electrical.step.LoadStep;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;

/** A load step at the load's node of a bank at two nodes. */
class TwoNodeStepTest {

    /**
     * 10 A in 10 us, far slower than the path of 2 mohm and 5 nH and the load's 10 uF: once the ramp is over and the ringing gone,
     * the load sees the resistance of bulk and path, and the charge taken from all capacitances together.
     */
    @Test
    void stepOfTheBankAloneIsSeenAtTheLoad() {
        TwoNodeBank bank = new TwoNodeBank(
                List.of(Banks.branch(1e-2, 0.005, 2e-9)), List.of(Banks.branch(1e-5, 0.01, 1e-9)), new SeriesPath(0.002, 5e-9), 0);
        StepResult step = LoadStep.of(new StepRequest(
                bank.seenFrom(Node.LOAD), null, new Load(0, 10, 1e6), 200e-6, false, 400, null, 0), new FittedBranch());
        double drawn = 10 * (200e-6 - 5e-6);
        double expected = 10 * 0.007 + drawn / 1e-2;
        assertThat(step.undershootV()).isCloseTo(expected, withPercentage(1));
    }
}
