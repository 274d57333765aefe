package org.stillrail.calculation;

/**
 * One wrong field of a request.
 *
 * @param field   JSON path such as {@code bank.branches[0].count}, {@code body} for the request as a whole
 * @param message a phrase that goes on from the field's name, such as "must be above 0"
 */
record FieldProblem(String field, String message) {

    static final String BODY = "body";
}
