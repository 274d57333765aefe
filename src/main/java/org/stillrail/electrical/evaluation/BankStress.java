package org.stillrail.electrical.evaluation;

import java.util.List;
import java.util.stream.IntStream;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.stress.StartUp;

/**
 * What a bank's parts bear and what it holds, over all corners.
 *
 * @param branches     in the bank's order
 * @param startUp      at the corner of its verdict; null where no ramp is asked or it is not modelled
 * @param startVerdict on it
 */
public record BankStress(List<BranchStress> branches, StoredCharge stored, StartUp startUp, Verdict startVerdict) {

    static BankStress of(Judgement judged) {
        return new BankStress(
                IntStream.range(0, judged.input().branches().size()).mapToObj(k -> BranchStress.of(judged, k)).toList(),
                StoredCharge.of(judged), startUp(judged), judged.on(Requirement.START_UP));
    }

    private static StartUp startUp(Judgement judged) {
        if (judged.input().rail().startUp() == null || judged.input().rail().converter().topology() != Topology.BUCK) {
            return null;
        }
        Corner corner = judged.setting(Requirement.START_UP).corner();
        return Tried.of(() -> StartUpJudge.of(judged.input().withBranches(corner.branches()), corner)).value();
    }
}
