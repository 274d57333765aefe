package org.stillrail.library;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Form;
import org.stillrail.web.Page;

/** The list of parts with its filters. */
@Controller
class PartListController {

    private static final int PAGE_SIZE = 50;

    private final Parts parts;

    PartListController(Parts parts) {
        this.parts = parts;
    }

    @GetMapping("/library")
    String list(@RequestParam MultiValueMap<String, String> parameters, Model model) {
        Form form = Form.of(parameters);
        PartFilter filter = read(form);
        Page page = Page.of(form, PAGE_SIZE, parts.count(filter));
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("page", page);
        model.addAttribute("parts", parts.list(filter, page.offset(), PAGE_SIZE));
        model.addAttribute("technologies", any(PartForm.technologies()));
        model.addAttribute("states", any(states()));
        return "library/list";
    }

    private static PartFilter read(Form form) {
        String text = form.text("text", "Search", false);
        Technology technology = form.read("technology", "Technology", false, Technology::ofKey);
        Double fromF = form.positive("capacitanceFrom", "Capacitance from", "F", false);
        Double toF = form.positive("capacitanceTo", "Capacitance to", "F", false);
        Double fromV = form.positive("ratedVoltageFrom", "Rated voltage from", "V", false);
        Vetting vetting = form.read("state", "State", false, PartListController::vetting);
        return new PartFilter(text, technology == null ? null : Set.of(technology), fromF, toF, fromV, vetting);
    }

    private static Vetting vetting(String text) {
        return Arrays.stream(Vetting.values())
                .filter(vetting -> vetting.label().equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + text + "' is not a state of a part"));
    }

    private static Map<String, String> states() {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(Vetting.values()).forEach(vetting -> choices.put(vetting.label(), vetting.label()));
        return choices;
    }

    private static Map<String, String> any(Map<String, String> choices) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", "any");
        all.putAll(choices);
        return all;
    }
}
