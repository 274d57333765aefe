package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.library.PartUse;
import org.stillrail.library.PartUses;

/** Tells the library which banks use a part. */
@Component
class PartsInBanks implements PartUses {

    private final BankEvidence evidence;

    PartsInBanks(BankEvidence evidence) {
        this.evidence = evidence;
    }

    @Override
    public List<PartUse> of(UUID partId) {
        return evidence.usesOf(partId).stream()
                .map(use -> new PartUse(use.bank(), use.path(), "revision " + use.number() + ", " + use.state().label(), use.railV(), use.changed()))
                .toList();
    }
}
