package org.stillrail.electrical.step;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;

/** Which road a branch takes into time. */
class FittedRealisationTest {

    private static RealisedBranch realise(ImpedanceModel model) {
        return new FittedRealisation().realise(
                new Branch("a", 2, model, new SeriesPath(0.001, 1e-9), SeriesPath.NONE), 40e3);
    }

    @Test
    void constantElementsStayExact() {
        RealisedBranch branch = realise(new SeriesRlc(1e-4, 0.01, 1e-9));
        assertThat(branch.errorPercent()).isNull();
        assertThat(branch.warning()).isNull();
    }

    @Test
    void closedFormIsSampledAndFitted() {
        RealisedBranch branch = realise(DatasheetModel.of(new LossFigures(2.2e-4, 0.1, 120, 0.03, 1e5), 3e-9));
        assertThat(branch.errorPercent()).isBetween(0.0, 1.0);
        assertThat(branch.space().states()).isGreaterThan(2);
    }

    /** No rational function of a few poles follows points that jump to and fro. */
    @Test
    void pointsWithoutAFitFallBackToTheSeriesEquivalentAndSaySo() {
        int n = 12;
        double[] hz = new double[n];
        double[] r = new double[n];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            hz[i] = 1e3 * Math.pow(2, i);
            r[i] = i % 2 == 0 ? 0.01 : 10;
            x[i] = i % 3 == 0 ? -5 : -0.02;
        }
        assertThat(realise(TableModel.of(hz, r, x)).warning()).contains("equivalent around").contains("fit");
    }
}
