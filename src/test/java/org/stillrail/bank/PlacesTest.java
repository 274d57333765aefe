package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.PartInput;

/** Where things stand, in words, and what is said when they move. */
class PlacesTest {

    private static final Distance PLANE = new Distance(new SeriesPath(5e-4, 2e-10), Node.LOAD, new SeriesRlc(2e-6, 0, 0));

    private static BranchInput branch(String label, SeriesPath mounting) {
        return new BranchInput(label, 2, null, null, null, PartInput.fixed(new SeriesRlc(1e-4, 0.01, 1e-9)), mounting, SeriesPath.NONE, "typed", false);
    }

    private static EvaluationInput input(Distance distance, BranchInput... branches) {
        return new EvaluationInput(EvaluationInput.METHOD_VERSION, null, List.of(branches)).withDistance(distance);
    }

    @Test
    void everyNumberSaysWhereItComesFrom() {
        BranchInput bulk = branch("bulk", new SeriesPath(0, 1.5e-9)).withPlace(Node.CONVERTER, "fitted to the bench record board.s2p");
        BranchInput small = branch("small", SeriesPath.NONE).withPlace(Node.LOAD, null);
        List<String> sentences = Places.sentences(input(PLANE, bulk, small));
        assertThat(sentences).hasSize(3);
        assertThat(sentences.get(0)).contains("500\u00a0\u00b5\u03a9", "200\u00a0pH", "sensed at the load", "2\u00a0\u00b5F");
        assertThat(sentences.get(1)).contains("at the converter", "1.5\u00a0nH", "board.s2p");
        assertThat(sentences.get(2)).isEqualTo("'small' stands at the load.");
    }

    @Test
    void bankAtOneNodeWithoutMountingsSaysNothing() {
        assertThat(Places.sentences(input(null, branch("bulk", SeriesPath.NONE)))).isEmpty();
        assertThat(Places.sentences(input(null, branch("bulk", new SeriesPath(1e-3, 0))))).singleElement().asString().contains("typed");
    }

    @Test
    void moveFromOneNodeToTheOtherIsADifference() {
        BranchInput near = branch("bulk", SeriesPath.NONE).withPlace(Node.CONVERTER, null);
        assertThat(BankDifferences.branches(List.of(near), List.of(near.withPlace(Node.LOAD, null))))
                .containsExactly("Branch 'bulk' stood at the converter and stands at the load.");
        assertThat(BankDifferences.branches(List.of(near), List.of(near.withPlace(Node.CONVERTER, "estimated from pads"))))
                .containsExactly("The mounting of branch 'bulk' is now estimated from pads.");
    }
}
