package org.stillrail.electrical.ripple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.capacitor.SeriesRlc;

/** The quick currents against those of the full ripple calculation, which sums as many harmonics as the voltage needs. */
class PartCurrentsTest {

    private static final Bank BANK = Banks.of(
            Banks.branch("bulk", 2, new SeriesRlc(220e-6, 0.015, 4e-9)), Banks.branch("ceramic", 6, new SeriesRlc(10e-6, 0.003, 0.7e-9)));

    private static void compare(PeriodicCurrent current, double percent) {
        List<HarmonicCurrents> quick = PartCurrents.of(BANK, current);
        List<BranchRipple> full = Ripple.of(BANK, current, 2).branches();
        for (int k = 0; k < full.size(); k++) {
            assertThat(quick.get(k).rmsA()).isCloseTo(full.get(k).perPartRmsA(), withPercentage(percent));
            assertThat(quick.get(k).equivalentA(hz -> hz < 1e6 ? 0.8 : 1))
                    .isCloseTo(full.get(k).perPart().equivalentA(hz -> hz < 1e6 ? 0.8 : 1), withPercentage(percent));
        }
    }

    @Test
    void theyAreThoseOfTheWholeCalculation() {
        compare(new BuckCurrent(12, 3.3, 2.2e-6, 500e3, 1), 1e-3);
        compare(new BuckCurrent(12, 1, 0.47e-6, 600e3, 3), 1e-3);
        compare(new BoostCurrent(5, 12, 4.7e-6, 400e3, 1, 1.5, 20e-9), 0.5);
        compare(new InvertingCurrent(12, 5, 6.8e-6, 300e3, 1, 1, 20e-9), 0.5);
    }
}
