package org.stillrail.report;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankPanel;

/** What can be taken away from a bank's page. */
@Component
@Order(1000)
class ReportPanel implements BankPanel {

    @Override
    public String fragment() {
        return "report/panel :: panel";
    }

    @Override
    public void addTo(Bank bank, CurrentPerson person, Model model) {
        model.addAttribute("reportBase", "/banks/" + bank.id() + "/revisions/" + bank.revision().number());
    }
}
