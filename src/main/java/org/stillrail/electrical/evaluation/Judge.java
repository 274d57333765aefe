package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.Verdict;

/** Judges one requirement of a rail at one corner. */
@FunctionalInterface
interface Judge {

    Verdict at(CornerFigures figures);
}
