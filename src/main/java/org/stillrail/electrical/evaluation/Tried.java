package org.stillrail.electrical.evaluation;

import java.util.function.Function;
import java.util.function.Supplier;
import org.stillrail.electrical.step.StepBudgetException;

/**
 * An answer, or the words in which the calculation refused it.
 *
 * @param value     null where refused
 * @param refusal   null where there is a value
 * @param exhausted refused only after all the computing that one call may do: not worth another try
 */
record Tried<T>(T value, String refusal, boolean exhausted) {

    static <T> Tried<T> of(Supplier<T> calculation) {
        try {
            return answer(calculation.get());
        } catch (StepBudgetException e) {
            return new Tried<>(null, e.getMessage(), true);
        } catch (IllegalArgumentException | ArithmeticException e) {
            return refused(e.getMessage());
        }
    }

    static <T> Tried<T> answer(T value) {
        return new Tried<>(value, null, false);
    }

    static <T> Tried<T> refused(String why) {
        return new Tried<>(null, why, false);
    }

    boolean answered() {
        return refusal == null;
    }

    <S> Tried<S> then(Function<T, S> next) {
        return answered() ? of(() -> next.apply(value)) : new Tried<>(null, refusal, exhausted);
    }
}
