package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Objects;

/** Branches in parallel. */
@Schema(name = "Bank", description = "Branches in parallel at one node; their order has no meaning.")
record BankInput(
        @NotNull @Size(min = 1, max = Limits.BRANCHES) @Valid List<@NotNull BranchInput> branches) implements CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        if (branches == null) {
            return;
        }
        long points = branches.stream()
                .filter(Objects::nonNull)
                .map(BranchInput::model)
                .mapToLong(model -> model instanceof TableInput table ? table.size() : 0)
                .sum();
        if (points > Limits.TABLE_POINTS) {
            problems.add(FieldProblems.path(path, "branches"), "hold tables of " + points + " points together; a call may have "
                    + Limits.TABLE_POINTS);
        }
    }
}
