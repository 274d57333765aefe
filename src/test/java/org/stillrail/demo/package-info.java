/**
 * Makes the demo's synthetic sweeps: a physical model of each invented part, the conditions it was "measured" at, a bench
 * with its noise, and the file formats. {@link org.stillrail.demo.DemoSweeps#main} rewrites {@code demo-data/library/sweeps}
 * (likewise {@code DemoFixtures} the fixture and {@code DemoBench} what was measured on a board);
 * the same seeds give the same bytes on every JDK, because only exactly specified arithmetic is used ({@code StrictMath},
 * an own generator of random numbers, decimals rounded from the exact binary value). Nothing here uses the product's own
 * arithmetic, so the committed files also serve as an independent check on the readers.
 */
package org.stillrail.demo;
