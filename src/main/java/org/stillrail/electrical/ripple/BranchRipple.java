package org.stillrail.electrical.ripple;

/**
 * The ripple current of one branch and the heat that it makes.
 *
 * @param rmsA                 of the whole branch
 * @param perPartRmsA          of each of its equal parts
 * @param perPartDissipationW  in each part alone: squared harmonics times Re Z of the part
 * @param mountingDissipationW in the mountings of all its parts together
 * @param sharedDissipationW   in the path that its parts share
 * @param perPart              the harmonics of each part's current
 */
public record BranchRipple(
        String label,
        double rmsA,
        double perPartRmsA,
        double perPartDissipationW,
        double mountingDissipationW,
        double sharedDissipationW,
        HarmonicCurrents perPart) {
}
