package org.stillrail.electrical.bank;

import java.util.Arrays;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.SeriesRlc;

/** Banks for tests, in few words. */
public final class Banks {

    private Banks() {
    }

    public static Branch branch(String label, int count, ImpedanceModel part) {
        return new Branch(label, count, part, SeriesPath.NONE, SeriesPath.NONE);
    }

    public static Branch branch(double capacitanceF, double resistanceOhm, double inductanceH) {
        return branch("a branch", 1, new SeriesRlc(capacitanceF, resistanceOhm, inductanceH));
    }

    public static Bank of(Branch... branches) {
        return new Bank(Arrays.asList(branches));
    }
}
