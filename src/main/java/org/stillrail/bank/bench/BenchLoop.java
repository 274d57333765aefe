package org.stillrail.bank.bench;

/** A measured loop gain. @param phaseDeg of T itself: -180 without margin */
record BenchLoop(double[] frequencyHz, double[] gainDb, double[] phaseDeg) {
}
