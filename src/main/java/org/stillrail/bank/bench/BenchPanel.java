package org.stillrail.bank.bench;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankPanel;

/** Leads from a bank's page to its bench. */
@Component
@Order(50)
class BenchPanel implements BankPanel {

    private final BenchRecords records;

    BenchPanel(BenchRecords records) {
        this.records = records;
    }

    @Override
    public String fragment() {
        return "bank/bench-panel :: panel";
    }

    @Override
    public void addTo(Bank bank, CurrentPerson person, Model model) {
        model.addAttribute("benchCount", records.count(bank.revision().id()));
        model.addAttribute("benchPath", "/banks/" + bank.id() + "/revisions/" + bank.revision().number());
    }
}
