package org.stillrail.bank;

import java.util.Optional;
import org.stillrail.electrical.evaluation.EvaluationInput;

/** What was frozen of a bank revision when it was submitted; the room that keeps it implements this. */
public interface FrozenInputs {

    /** Empty before submission, and where what was stored cannot be read any more. */
    Optional<EvaluationInput> of(Bank bank);
}
