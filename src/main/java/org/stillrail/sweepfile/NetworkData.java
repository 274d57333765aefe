package org.stillrail.sweepfile;

/**
 * Network parameters of one or two ports in SI units: S as it is, Z in ohm, Y in siemens. {@code re[e][k]} and
 * {@code im[e][k]} belong to entry e (see the constants) at {@code frequencyHz[k]}, in the order of the file. Package-private,
 * and its arrays are not changed after reading.
 *
 * @param referenceOhm one resistance per port
 * @param orderKnown   false where a two-port file does not say which of its transfer columns comes first
 */
record NetworkData(Parameter parameter, double[] frequencyHz, double[][] re, double[][] im, double[] referenceOhm,
                   boolean orderKnown) {

    static final int N11 = 0;
    static final int N21 = 1;
    static final int N12 = 2;
    static final int N22 = 3;

    enum Parameter { S, Z, Y }

    int ports() {
        return re.length == 1 ? 1 : 2;
    }

    int size() {
        return frequencyHz.length;
    }

    /** Whether N21 and N12 are the same numbers throughout, as they are for every passive part without ferrite. */
    boolean isSymmetric() {
        for (int k = 0; k < size(); k++) {
            if (re[N21][k] != re[N12][k] || im[N21][k] != im[N12][k]) {
                return false;
            }
        }
        return true;
    }
}
