/**
 * Reading and writing measured sweeps: Touchstone and delimited text in, complex impedance over frequency out.
 * {@link org.stillrail.sweepfile.SweepReader} is the way in; every refusal is a
 * {@link org.stillrail.sweepfile.SweepFileException} that names the line. What is read and what is refused is listed in
 * docs/sweep-files.md.
 */
package org.stillrail.sweepfile;
