package org.stillrail.bank;

import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;

/** What a room above adds to the page of a stored bank: it fills the model and names the fragment that shows it. */
public interface BankPanel {

    /** Name in the model under which a panel finds the evaluation of the bank, where the physics gave one. */
    String EVALUATION = "evaluation";

    /** Fragment as Thymeleaf names it, such as {@code review/panel :: panel}. */
    String fragment();

    void addTo(Bank bank, CurrentPerson person, Model model);
}
