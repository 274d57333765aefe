package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.project.RailBank;
import org.stillrail.project.RailBanks;

/** Tells the room of projects which banks a rail has. */
@Component
class BanksOfRails implements RailBanks {

    private final BankRows banks;
    private final RailRevisions rails;

    BanksOfRails(BankRows banks, RailRevisions rails) {
        this.banks = banks;
        this.rails = rails;
    }

    @Override
    public List<RailBank> of(UUID railId) {
        UUID newest = rails.newestOf(railId);
        return banks.ofRail(railId).stream()
                .map(bank -> new RailBank(bank.id(), bank.name(), bank.state().label(), bank.latestNumber(), bank.revision().author(),
                        !bank.document().railRevisionId().equals(newest)))
                .toList();
    }
}
