package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class CompareChoiceTest {

    private static final UUID A = new UUID(0, 1);
    private static final UUID B = new UUID(0, 2);
    private static final UUID C = new UUID(0, 3);

    @Test
    void oneIsAddedBehindTheBanksAndTakenOutByItsPlaceOverBoth() {
        CompareChoice choice = CompareChoice.of(List.of(A, A), List.of(B));
        assertThat(choice.size()).isEqualTo(2);
        assertThat(choice.with(C)).isEqualTo("/compare?bank=" + A + "&bank=" + C + "&revision=" + B);
        assertThat(choice.without(0)).isEqualTo("/compare?revision=" + B);
        assertThat(choice.without(1)).isEqualTo("/compare?bank=" + A);
    }

    @Test
    void twoToSixAreCompared() {
        List<UUID> ids = LongStream.range(0, 7).mapToObj(i -> new UUID(1, i)).toList();
        assertThat(CompareChoice.of(null, null).mayCompare()).isFalse();
        assertThat(CompareChoice.of(ids.subList(0, 1), null).mayCompare()).isFalse();
        assertThat(CompareChoice.of(ids.subList(0, 6), null).mayCompare()).isTrue();
        assertThat(CompareChoice.of(ids.subList(0, 6), null).hasRoom()).isFalse();
        assertThat(CompareChoice.of(ids, null).mayCompare()).isFalse();
    }
}
