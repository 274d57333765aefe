package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class BankPhaseTest {

    @Test
    void theEsrZeroOfOneCapacitorIsTheTextbooks() {
        // Row LP-01
        double[][] rows = {{0.01, 470e-6, 33862.75384933943}, {0.002, 100e-6, 795774.7154594767}, {0.005, 1e-3, 31830.988618379066}};
        for (double[] row : rows) {
            Bank bank = bank(new SeriesRlc(row[1], row[0], 0));
            Check.that(Topic.LOOP, "ESR zero of %s mohm and %s uF: 1 / (2 pi R C)".formatted((float) (1e3 * row[0]), (float) (1e6 * row[1])))
                    .source(Source.fromMemory("textbooks")).expected("Hz", row[2]).relative(1e-9).got(BankPhase.esrZeroHz(bank, 10, 10e6));
            Check.that(Topic.LOOP, "Phase lead of a bank at its ESR zero").source(Source.fromMemory("textbooks"))
                    .expected("45 deg in three cases").absolute(1e-9).compare("deg", 45, BankPhase.leadDeg(bank, row[2]));
        }
    }

    @Test
    void ceramicsBesideBulkMoveOrRemoveTheZero() {
        SeriesRlc bulk = new SeriesRlc(470e-6, 0.01, 0);
        double alone = BankPhase.esrZeroHz(bank(bulk), 10, 10e6);
        double beside = BankPhase.esrZeroHz(bank(bulk, new SeriesRlc(22e-6, 0.002, 0)), 10, 10e6);
        assertTrue(beside > alone);
        assertNull(BankPhase.esrZeroHz(bank(bulk, new SeriesRlc(470e-6, 0, 0)), 10, 10e6));
    }

    private static Bank bank(SeriesRlc... parts) {
        return new Bank(List.of(parts).stream().map(part -> new Branch("c", 1, part, SeriesPath.NONE, SeriesPath.NONE)).toList());
    }
}
