package org.stillrail.sweepfile;

/** The numbers of one line of a file and the line's number, counted from 1. */
record NumberLine(int number, double[] values) {

    int size() {
        return values.length;
    }
}
