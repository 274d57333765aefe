package org.stillrail.electrical.bank;

/**
 * What a change of one branch does to one figure.
 *
 * @param unit     SI symbol
 * @param now      as the bank is
 * @param oneMore  with one part more in the branch
 * @param oneFewer with one part fewer, null where the branch has a single part
 * @param none     without the branch, null where it is the only one
 */
public record FigureEffect(String name, String unit, double now, double oneMore, Double oneFewer, Double none) {
}
