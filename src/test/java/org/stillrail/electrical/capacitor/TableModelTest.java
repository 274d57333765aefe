package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.FrequencyGrid;

class TableModelTest {

    private static final double[] HZ = {1e3, 1e4, 1e5, 1e6};
    private static final double[] R = {0.5, 0.3, 0.2, 0.25};
    private static final double[] X = {-10, -1, 0.5, 5};

    private final TableModel table = TableModel.of(HZ, R, X);

    @Test
    void betweenPointsItIsStraightOverLogFrequency() {
        double hz = Math.sqrt(1e3 * 1e4);
        assertThat(table.at(hz).resistanceOhm()).isCloseTo(0.4, within(1e-12));
        assertThat(table.at(hz).reactanceOhm()).isCloseTo(-5.5, within(1e-12));
        assertThat(table.at(1e5).reactanceOhm()).isEqualTo(0.5);
    }

    @Test
    void outsideItHoldsResistanceAndGoesOnAsTheElementThatTheEndShows() {
        assertThat(table.at(100).resistanceOhm()).isEqualTo(0.5);
        assertThat(table.at(100).reactanceOhm()).isCloseTo(-100, within(1e-12));
        assertThat(table.at(1e8).resistanceOhm()).isEqualTo(0.25);
        assertThat(table.at(1e8).reactanceOhm()).isCloseTo(500, within(1e-9));
        assertThat(table.inductanceAtInfinityH()).isCloseTo(5 / (2 * Math.PI * 1e6), within(1e-18));
        TableModel capacitive = TableModel.of(new double[] {1e3, 1e4}, new double[] {1, 1}, new double[] {-10, -1});
        assertThat(capacitive.at(1e5).reactanceOhm()).isCloseTo(-0.1, within(1e-12));
        assertThat(capacitive.inductanceAtInfinityH()).isZero();
        TableModel inductive = TableModel.of(new double[] {1e3, 1e4}, new double[] {1, 1}, new double[] {1, 10});
        assertThat(inductive.at(100).reactanceOhm()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void gridAndSingleFrequencyAgreeEverywhere() {
        FrequencyGrid grid = FrequencyGrid.of(10, 1e3, 2e3, 1e4, 5e4, 1e5, 3e5, 1e6, 1e7);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        table.addImpedanceTo(grid, r, x);
        for (int i = 0; i < grid.size(); i++) {
            assertThat(r[i]).isCloseTo(table.at(grid.hz(i)).resistanceOhm(), within(1e-14));
            assertThat(x[i]).isCloseTo(table.at(grid.hz(i)).reactanceOhm(), within(1e-12));
        }
    }

    @Test
    void slopesMatchDifferences() {
        for (double hz : new double[] {50, 2e3, 7e4, 5e5, 3e6}) {
            Slopes.check(table, hz);
        }
    }

    @Test
    void sparseTableWarnsAndDenseOneDoesNot() {
        assertThat(table.warnings()).singleElement().asString().contains("20 points a decade");
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e3, 1e6, 61);
        double[] flat = new double[61];
        assertThat(TableModel.of(grid.toArray(), flat, flat).warnings()).isEmpty();
    }

    @Test
    void negativeResistanceIsKeptAndSaid() {
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e3, 1e4, 30);
        double[] r = new double[30];
        r[7] = -1e-5;
        TableModel noisy = TableModel.of(grid.toArray(), r, new double[30]);
        assertThat(noisy.resistanceOhm(7)).isEqualTo(-1e-5);
        assertThat(noisy.warnings()).singleElement().asString().contains("negative resistance at 1 of 30");
    }

    @Test
    void badTablesAreRefusedByName() {
        assertThatThrownBy(() -> TableModel.of(HZ, R, new double[3])).hasMessageContaining("equally long");
        assertThatThrownBy(() -> TableModel.of(new double[] {1, 1}, new double[2], new double[2])).hasMessageContaining("index 1");
        assertThatThrownBy(() -> TableModel.of(new double[] {1}, new double[1], new double[1])).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> TableModel.of(new double[] {1, 2}, new double[] {0, Double.NaN}, new double[2]))
                .hasMessageContaining("resistanceOhm[1]");
    }
}
