package org.stillrail.team;

import java.util.List;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.account.Role;
import org.stillrail.document.Revision;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.Overtaken;
import org.stillrail.web.StaleVersionException;

/** The settings: read by everyone, changed by administrators; every older revision stays readable. */
@Controller
class SettingsController {

    private final Settings settings;

    SettingsController(Settings settings) {
        this.settings = settings;
    }

    @GetMapping("/settings")
    String show(@AuthenticationPrincipal CurrentPerson person, Model model) {
        int number = settings.latest().map(Revision::number).orElse(0);
        return page(SettingsForm.fill(settings.current()), number, person.has(Role.ADMINISTRATOR), model);
    }

    @GetMapping("/settings/revisions/{number}")
    String showRevision(@PathVariable int number, Model model) {
        return page(SettingsForm.fill(require(number).document()), number, false, model);
    }

    @PostMapping("/settings")
    @PreAuthorize(May.ADMINISTER)
    String change(
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        SettingsDocument document = SettingsForm.read(form);
        int newest = settings.latest().map(Revision::number).orElse(0);
        Integer from = form.whole("from", "Revision", 0, newest, true);
        if (document == null || from == null) {
            return page(form, from == null ? 0 : from, true, model);
        }
        try {
            settings.change(from, document, person);
        } catch (StaleVersionException e) {
            List<Revision<SettingsDocument>> since = settings.history().stream().filter(revision -> revision.number() > from).toList();
            SettingsDocument began = from == 0 ? SettingsDocument.DEFAULT : require(from).document();
            model.addAttribute("overtaken", Overtaken.carryOver(new SettingsShape(), form, began, since));
            return page(form, since.get(0).number(), true, model);
        }
        redirect.addFlashAttribute("notice", "Saved as revision " + (from + 1) + ". Evaluations from now on use it; what was submitted keeps what it had.");
        return "redirect:/settings";
    }

    private Revision<SettingsDocument> require(int number) {
        return settings.find(number).orElseThrow(() -> new NotFoundException("The settings have no revision " + number + "."));
    }

    private String page(Form form, int number, boolean mayEdit, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("number", number);
        model.addAttribute("mayEdit", mayEdit);
        model.addAttribute("technologies", List.of(Technology.values()));
        model.addAttribute("items", List.of(VettingItem.values()));
        model.addAttribute("history", settings.history());
        return "team/settings";
    }
}
