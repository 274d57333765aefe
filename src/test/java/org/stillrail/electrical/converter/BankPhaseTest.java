package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;

class BankPhaseTest {

    @Test
    void theEsrZeroOfOneCapacitorIsTheTextbooks() {
        // Row LP-01: 1 / (2 pi R C), textbook, from memory.
        double[][] rows = {{0.01, 470e-6, 33862.75384933943}, {0.002, 100e-6, 795774.7154594767}, {0.005, 1e-3, 31830.988618379066}};
        for (double[] row : rows) {
            Bank bank = bank(new SeriesRlc(row[1], row[0], 0));
            assertEquals(row[2], BankPhase.esrZeroHz(bank, 10, 10e6), 1e-9 * row[2]);
            assertEquals(45, BankPhase.leadDeg(bank, row[2]), 1e-9);
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
