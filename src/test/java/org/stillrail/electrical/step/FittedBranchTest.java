package org.stillrail.electrical.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class FittedBranchTest {

    private static final SeriesPath MOUNTING = new SeriesPath(0.2e-3, 0.4e-9);

    private static TableModel table(ImpedanceModel model) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(100, 1e8, 301);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        model.addImpedanceTo(grid, r, x);
        return TableModel.of(grid.toArray(), r, x);
    }

    private static Bank bank(ImpedanceModel bulk, ImpedanceModel ceramic) {
        return new Bank(List.of(new Branch("bulk", 2, bulk, MOUNTING, SeriesPath.NONE),
                new Branch("ceramic", 6, ceramic, MOUNTING, new SeriesPath(0.1e-3, 0.1e-9))));
    }

    private static StepResult step(Bank bank, BranchRealisation realisation) {
        return LoadStep.of(new StepRequest(bank, null, new Load(0, 5, 5e6), 20e-6, true, 400, null), realisation);
    }

    /** A table of a series R-L-C gives the step of the exact part: 0.1 % of the deviation at every sample. */
    @Test
    void aTableStepsAsThePartThatMadeIt() {
        SeriesRlc bulk = new SeriesRlc(220e-6, 0.012, 3e-9);
        SeriesRlc ceramic = new SeriesRlc(10e-6, 0.003, 0.5e-9);
        StepResult exact = step(bank(bulk, ceramic), new FittedBranch());
        StepResult fitted = step(bank(table(bulk), table(ceramic)), new FittedBranch());
        assertThat(exact.fitErrorPercent()).isNull();
        assertThat(fitted.fitErrorPercent()).isLessThan(0.1);
        for (int i = 0; i < exact.deviationV().length; i++) {
            Check.that(Topic.STEP, "Tables of two series R-L-C through their rational fits, step of the bank alone: error over the undershoot")
                    .source(Source.independent("exact state equations of the R-L-C themselves")).expected("the same deviation at 400 instants").absolute(1e-3)
                    .compare("", 0, (fitted.deviationV()[i] - exact.deviationV()[i]) / exact.undershootV());
        }
    }

    /** A part with a constant-phase element has no constant R, L and C; its fit is within 1 % of its impedance, and says so. */
    @Test
    void aDatasheetModelIsRealisedWithinOnePerCent() {
        DatasheetModel bulk = new DatasheetModel(0.02, 10e-9, 300e-6, 0.94, List.of());
        StepResult result = step(bank(bulk, new SeriesRlc(10e-6, 0.003, 0.5e-9)), new FittedBranch());
        assertThat(result.fitErrorPercent()).isBetween(1e-6, 1.0);
        assertThat(result.warnings()).noneMatch(warning -> warning.contains("series R-L-C"));
        assertThat(result.undershootV()).isPositive();
    }

    @Test
    void aTableWithoutAPassiveFitFallsBackAndSaysSo() {
        FrequencyGrid grid = FrequencyGrid.logSpaced(100, 1e8, 301);
        double[] r = new double[301];
        double[] x = new double[301];
        new SeriesRlc(220e-6, 0.012, 3e-9).addImpedanceTo(grid, r, x);
        for (int i = 0; i < 200; i++) {
            r[i] = -0.05;
        }
        RealisedBranch realised = new FittedBranch().realise(
                new Branch("odd", 1, TableModel.of(grid.toArray(), r, x), MOUNTING, SeriesPath.NONE), 1e6);
        assertThat(realised.warning()).contains("odd").contains("no passive fit");
    }
}
