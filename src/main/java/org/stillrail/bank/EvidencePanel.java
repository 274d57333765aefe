package org.stillrail.bank;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;

/** Says on a bank's page that a part of it has changed since it was saved. */
@Component
@Order(-100)
class EvidencePanel implements BankPanel {

    private final BankEvidence evidence;

    EvidencePanel(BankEvidence evidence) {
        this.evidence = evidence;
    }

    @Override
    public String fragment() {
        return "bank/evidence :: panel";
    }

    @Override
    public void addTo(Bank bank, CurrentPerson person, Model model) {
        List<BankEvidence.ChangedPart> changes = evidence.changesOf(bank.revision().id());
        model.addAttribute("evidenceChanges", changes);
    }
}
