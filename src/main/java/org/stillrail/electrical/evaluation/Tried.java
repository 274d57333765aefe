package org.stillrail.electrical.evaluation;

import java.util.function.Function;
import java.util.function.Supplier;
import org.stillrail.electrical.step.StepBudgetException;

/**
 * An answer, or the words in which the calculation refused it.
 *
 * @param value   null where refused
 * @param refusal null where there is a value
 */
record Tried<T>(T value, String refusal) {

    static <T> Tried<T> of(Supplier<T> calculation) {
        try {
            return new Tried<>(calculation.get(), null);
        } catch (IllegalArgumentException | ArithmeticException | StepBudgetException e) {
            return refused(e.getMessage());
        }
    }

    static <T> Tried<T> refused(String why) {
        return new Tried<>(null, why);
    }

    boolean answered() {
        return refusal == null;
    }

    <S> Tried<S> then(Function<T, S> next) {
        return answered() ? of(() -> next.apply(value)) : refused(refusal);
    }
}
