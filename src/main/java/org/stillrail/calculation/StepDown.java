package org.stillrail.calculation;

/** A buck converter only steps down. */
final class StepDown {

    private StepDown() {
    }

    static void check(String path, Double inputV, Double outputV, FieldProblems problems) {
        if (inputV != null && outputV != null && !(outputV < inputV)) {
            problems.add(FieldProblems.path(path, "outputV"), "must be below inputV: a buck converter steps down");
        }
    }
}
