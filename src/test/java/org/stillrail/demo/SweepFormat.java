package org.stillrail.demo;

import java.util.List;

/** How an instrument writes its readings; {@code remarks} are lines for the head of the file. */
interface SweepFormat {

    String write(List<String> remarks, List<Reading> readings, Bench bench);
}
