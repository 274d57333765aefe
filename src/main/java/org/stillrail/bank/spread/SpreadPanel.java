package org.stillrail.bank.spread;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankPanel;

/** Leads from a bank's page to its random banks. */
@Component
@Order(40)
class SpreadPanel implements BankPanel {

    @Override
    public String fragment() {
        return "bank/spread-panel :: panel";
    }

    @Override
    public void addTo(Bank bank, CurrentPerson person, Model model) {
        model.addAttribute("spreadPath", "/banks/" + bank.id() + "/revisions/" + bank.revision().number() + "/spread");
    }
}
