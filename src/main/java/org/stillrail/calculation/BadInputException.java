package org.stillrail.calculation;

import java.util.List;

/** A request that is refused, with every wrong field that was found. */
class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<FieldProblem> problems;

    BadInputException(List<FieldProblem> problems) {
        super(problems.toString());
        this.problems = List.copyOf(problems);
    }

    BadInputException(String field, String message) {
        this(List.of(new FieldProblem(field, message)));
    }

    List<FieldProblem> problems() {
        return problems;
    }
}
