package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;

/** Everything that is wrong with one request, in the order found, at most one message a field. */
final class FieldProblems {

    private static final int MOST = 100;

    private final List<FieldProblem> problems = new ArrayList<>();

    static String path(String parent, String child) {
        return parent.isEmpty() ? child : parent + "." + child;
    }

    static String path(String parent, int index) {
        return parent + "[" + index + "]";
    }

    /** Notes a problem unless this field, or something inside it, has one already. */
    void add(String path, String message) {
        String field = path.isEmpty() ? FieldProblem.BODY : path;
        if (problems.size() < MOST && !touches(field)) {
            problems.add(new FieldProblem(field, message));
        }
    }

    private boolean touches(String field) {
        return problems.stream().map(FieldProblem::field).anyMatch(known -> known.equals(field)
                || known.startsWith(field) && (known.charAt(field.length()) == '.' || known.charAt(field.length()) == '['));
    }

    void refuseIfAny() {
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
    }
}
