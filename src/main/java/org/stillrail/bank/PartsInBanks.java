package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.library.PartUse;
import org.stillrail.library.PartUses;

/** Tells the library which banks use a part. */
@Component
class PartsInBanks implements PartUses {

    private final BankRows banks;

    PartsInBanks(BankRows banks) {
        this.banks = banks;
    }

    @Override
    public List<PartUse> of(UUID partId) {
        return banks.usingPart(partId).stream()
                .map(bank -> new PartUse(bank.name(), "/banks/" + bank.id(), "revision " + bank.latestNumber() + ", " + bank.state().label()))
                .toList();
    }
}
