package org.stillrail.electrical.step;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** The state space and the curves are two roads to the same loop. */
class CircuitTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(123.4, 0.987e7, 41);

    @Property(tries = 500)
    void theClosedLoopImpedanceOfTheStateSpaceIsThatOfTheCurves(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        Bank bank = cases.bank();
        PowerStage stage = cases.stage();
        Converter converter = new Converter(stage, cases.coin() ? cases.voltageMode(false) : cases.currentMode(stage), cases.compensator())
                .withLoadLineOhm(cases.coin() ? 0 : cases.between(1e-4, 2e-2));
        LoopResult loop = Loop.of(bank, converter, GRID);
        Circuit circuit = circuit(bank, converter);
        sameImpedance("500 random banks and converters, half with a load line", circuit, loop);
    }

    @Property(tries = 500)
    void encirclementsAndPolesAgreeOnStability(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        Bank bank = cases.bank();
        PowerStage stage = cases.stage();
        Converter converter = new Converter(stage, cases.coin() ? cases.voltageMode(false) : cases.currentMode(stage), cases.compensator())
                .withLoadLineOhm(cases.coin() ? 0 : cases.between(1e-4, 2e-2));
        sameStability("500 random banks and converters", circuit(bank, converter), Loop.of(bank, converter, GRID));
    }

    /** The angle that a load line adds where the load is sensed is no passive one, so the encirclements are tried on many. */
    @Property(tries = 1000)
    void aLoadLineWithTwoNodesIsTheSameOnBothRoads(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        Bank bank = cases.bankAtTwoNodes();
        PowerStage stage = cases.stage();
        Converter converter = new Converter(stage, cases.coin() ? cases.voltageMode(false) : cases.currentMode(stage), cases.compensator())
                .withLoadLineOhm(cases.between(1e-4, 2e-2));
        LoopResult loop = Loop.of(bank, converter, GRID);
        Circuit circuit = BankEquations.of(StepRequest.of(bank, converter, new Load(1, 2, 1e6), 1e-3), new SeriesEquivalent()).circuit(converter, 1);
        sameImpedance("1000 random banks at two nodes with a load line", circuit, loop);
        sameStability("1000 random banks at two nodes with a load line", circuit, loop);
    }

    private static void sameImpedance(String cases, Circuit circuit, LoopResult loop) {
        for (int i = 0; i < GRID.size(); i++) {
            Check.that(Topic.STEP, "Closed-loop impedance of the state equations against that of the curves, " + cases)
                    .source(Source.independent("state equations solved as a real linear system at each frequency (EJML)"))
                    .expected("the same |Z| at 41 frequencies each").relative(1e-5)
                    .compare("ohm", closedImpedanceOhm(circuit, GRID.omega(i)), loop.closedImpedanceOhm()[i]);
        }
    }

    /** Says nothing of a loop within rounding of the limit of stability. */
    private static void sameStability(String cases, Circuit circuit, LoopResult loop) {
        double largest = largestRealPart(circuit);
        if (Math.abs(largest) >= 1e-9 * fastest(circuit)) {
            Check.that(Topic.LOOP, "Stability by encirclements, " + cases)
                    .source(Source.independent("eigenvalues of the closed loop's state matrix (EJML)")).expected("stable where all real parts are negative")
                    .compare("", largest < 0 ? 1 : 0, loop.stable() ? 1 : 0);
        }
    }

    private static Circuit circuit(Bank bank, Converter converter) {
        List<AdmittanceStateSpace> branches = bank.branches().stream().map(branch -> new SeriesEquivalent().realise(branch, 1e4).space()).toList();
        return new Circuit(branches, converter, 1);
    }

    /**
     * Solves the state equations for a load current of 1 A at one frequency: real and imaginary part as one real system. The
     * elimination loses digits where states differ by many powers of ten; a wrong equation misses by far more than 1e-5.
     */
    private static double closedImpedanceOhm(Circuit circuit, double omega) {
        Mode mode = circuit.mode(Regime.FREE);
        int n = circuit.size();
        double[] m = mode.propagator().matrix();
        int driven = drivenStates(circuit);
        double[] scale = Propagator.balance(m, n);
        double[] load = new double[n];
        circuit.setLoad(load, 1);
        double[] slope = new double[n];
        circuit.setLoadSlope(slope, omega);
        DMatrixRMaj system = new DMatrixRMaj(2 * driven, 2 * driven);
        DMatrixRMaj right = new DMatrixRMaj(2 * driven, 1);
        for (int row = 0; row < driven; row++) {
            for (int column = 0; column < driven; column++) {
                system.set(row, column, -m[row * n + column] * scale[column] / scale[row]);
                system.set(driven + row, driven + column, -m[row * n + column] * scale[column] / scale[row]);
            }
            system.set(row, driven + row, -omega);
            system.set(driven + row, row, omega);
            for (int column = 0; column < n; column++) {
                right.add(row, 0, m[row * n + column] * load[column] / scale[row]);
                right.add(driven + row, 0, m[row * n + column] * slope[column] / scale[row]);
            }
        }
        DMatrixRMaj states = new DMatrixRMaj(2 * driven, 1);
        CommonOps_DDRM.solve(system, right, states);
        double[] real = load.clone();
        double[] imaginary = slope.clone();
        for (int row = 0; row < driven; row++) {
            real[row] = states.get(row) * scale[row];
            imaginary[row] = states.get(driven + row) * scale[row];
        }
        return Math.hypot(mode.voltage().of(real), mode.voltage().of(imaginary));
    }

    private static double largestRealPart(Circuit circuit) {
        double largest = Double.NEGATIVE_INFINITY;
        EigenDecomposition_F64<DMatrixRMaj> eigen = eigenvalues(circuit);
        for (int k = 0; k < eigen.getNumberOfEigenvalues(); k++) {
            Complex_F64 value = eigen.getEigenvalue(k);
            largest = Math.max(largest, value.real);
        }
        return largest;
    }

    private static double fastest(Circuit circuit) {
        double fastest = 0;
        EigenDecomposition_F64<DMatrixRMaj> eigen = eigenvalues(circuit);
        for (int k = 0; k < eigen.getNumberOfEigenvalues(); k++) {
            fastest = Math.max(fastest, eigen.getEigenvalue(k).getMagnitude());
        }
        return fastest;
    }

    private static EigenDecomposition_F64<DMatrixRMaj> eigenvalues(Circuit circuit) {
        int n = circuit.size();
        int driven = drivenStates(circuit);
        double[] m = circuit.mode(Regime.FREE).propagator().matrix();
        double[] scale = Propagator.balance(m, n);
        DMatrixRMaj matrix = new DMatrixRMaj(driven, driven);
        for (int row = 0; row < driven; row++) {
            for (int column = 0; column < driven; column++) {
                matrix.set(row, column, m[row * n + column] * scale[column] / scale[row]);
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(driven, false);
        eigen.decompose(matrix);
        return eigen;
    }

    /** All but the load, its slope and the constant. */
    private static int drivenStates(Circuit circuit) {
        return circuit.size() - 3;
    }
}
