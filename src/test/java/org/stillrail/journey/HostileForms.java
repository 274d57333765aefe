package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.FilePayload;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Types {@link HostileText} into forms and sends them: first into every field that takes text, then once more with good values where
 * the answer refused it. Remembers which fields of which forms were typed into, and what was accepted.
 */
final class HostileForms {

    private static final int MOST_ROUNDS = 5;
    private static final int REFUSED_FROM = 400;

    /** Names the text fields of a form; a form of many addresses is one by what its action looks like, or by its id. */
    private static final String FIELDS_OF = """
            form => {
              const action = (form.getAttribute('action') || form.getAttribute('hx-post') || '').split('?')[0]
                .replace(/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g, '*').replace(/\\d+/g, '#');
              return [...form.elements].filter(field => field.matches('textarea, input:not([type]), input[type=text], input[type=search]') && !field.disabled && field.name)
                .map(field => [(form.id ? 'form ' + form.id : form.method.toUpperCase() + ' ' + action) + ', ' + field.name.replace(/\\d+/g, '#'), field.name, field.value, field.checkVisibility() ? 'seen' : '']);
            }""";

    private static final String SET = """
            (form, values) => {
              for (const field of form.elements) {
                if (field.name in values) {
                  field.value = values[field.name];
                  field.dispatchEvent(new Event('input', { bubbles: true }));
                } else if (field.tagName === 'SELECT' && field.value === '' && field.name.endsWith('owner')) {
                  field.value = [...field.options].pop().value;
                } else if (field.type === 'date' && field.value === '') {
                  field.value = '2099-12-31';
                }
              }
            }""";

    private final HostileText text = new HostileText();
    private final Set<String> typedInto = new LinkedHashSet<>();
    private final Map<String, String> accepted = new LinkedHashMap<>();

    /** Form and name of every text field that was typed into. */
    Set<String> typedInto() {
        return typedInto;
    }

    /** What was accepted and has to be shown somewhere, with the field that it was typed into. */
    Map<String, String> accepted() {
        return accepted;
    }

    String next() {
        return text.next();
    }

    String nextBrief() {
        return text.nextBrief();
    }

    /** Form and name of every text field on a page. */
    static List<String> fieldsOn(Page page) {
        List<String> fields = new ArrayList<>();
        for (Locator form : page.locator("form").all()) {
            fieldsOf(form).forEach(field -> fields.add(field.get(0)));
        }
        return fields;
    }

    /** Each as form and name, name, what stands in it, and whether it is to be seen. */
    @SuppressWarnings("unchecked")
    private static List<List<String>> fieldsOf(Locator form) {
        return (List<List<String>>) form.evaluate(FIELDS_OF);
    }

    /** Types into a form whose answer is no matter to anybody else: a search, a filter. */
    void ask(Visitor visitor, String form) {
        send(visitor, form, Map.of(), null, false);
    }

    /**
     * @param form   CSS of the form
     * @param values by name: of fields that take no text, and for those that take only some texts
     */
    void store(Visitor visitor, String form, Map<String, String> values) {
        send(visitor, form, values, null, true);
    }

    /** @param file for the form's field of a file, which a refused form has lost */
    void store(Visitor visitor, String form, Map<String, String> values, FilePayload file) {
        send(visitor, form, values, file, true);
    }

    private void send(Visitor visitor, String css, Map<String, String> values, FilePayload file, boolean stored) {
        Page page = visitor.page();
        visitor.rests();
        Locator form = page.locator(css).first();
        open(form);
        Set<String> seen = new LinkedHashSet<>();
        Map<String, String> typed = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, String> before = new LinkedHashMap<>();
        for (List<String> field : fieldsOf(form)) {
            names.put(field.get(1), field.get(0));
            before.put(field.get(1), field.get(2));
            typed.put(field.get(1), text.next());
            if (!field.get(3).isEmpty()) {
                seen.add(field.get(1));
            }
        }
        assertThat(typed).as("text fields of " + css + " at " + page.url()).isNotEmpty();
        typedInto.addAll(names.values());
        Map<String, String> all = new LinkedHashMap<>(values);
        all.putAll(typed);
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            if (file != null) {
                page.locator(css + " input[type=file]").setInputFiles(file);
            }
            int status = send(visitor, page.locator(css).first(), all);
            assertThat(HostileText.effectsOn(page)).as("after sending " + css).isEmpty();
            Set<String> refused = refused(page);
            if (status < REFUSED_FROM && refused.isEmpty()) {
                if (stored) {
                    // A field that a choice beside it hides is of no matter to what is stored.
                    seen.stream().filter(name -> HostileText.is(all.get(name))).forEach(name -> accepted.put(all.get(name), names.get(name)));
                }
                return;
            }
            if (!stored) {
                return;
            }
            if (refused.isEmpty()) {
                // The message names the field, the page does not mark it.
                typed.keySet().stream().filter(name -> values.containsKey(name) && HostileText.is(all.get(name))).forEach(refused::add);
            }
            assertThat(refused).as("fields of " + css + " that the page refuses, status " + status + ": " + problems(page)).isNotEmpty();
            Map<String, String> kept = new LinkedHashMap<>();
            fieldsOf(page.locator(css).first()).forEach(field -> kept.put(field.get(1), field.get(2)));
            typed.keySet().forEach(name -> assertThat(kept.get(name)).as("what was typed into " + names.get(name)).isEqualTo(all.get(name)));
            refused.stream().filter(typed::containsKey).forEach(name -> all.put(name, values.getOrDefault(name, before.getOrDefault(name, ""))));
        }
        throw new AssertionError(css + " is refused again and again: " + problems(page));
    }

    private int send(Visitor visitor, Locator form, Map<String, String> values) {
        visitor.rests();
        open(form);
        form.evaluate(SET, values);
        Locator button = form.locator("button:not([type=button])").last();
        Runnable press = button.count() == 0 ? () -> form.evaluate("form => form.requestSubmit()") : button::click;
        if (form.getAttribute("hx-post") != null && form.getAttribute("action") == null) {
            Response answer = visitor.page().waitForResponse(response -> response.url().endsWith("/sweeps"), press);
            if (answer.headerValue("HX-Redirect") == null) {
                visitor.rests();
                return REFUSED_FROM;
            }
            visitor.page().waitForURL("**" + answer.headerValue("HX-Redirect"));
            return answer.status();
        }
        Response answer = visitor.page().waitForNavigation(press);
        visitor.rests();
        return answer.status();
    }

    private static void open(Locator form) {
        form.evaluate("form => form.querySelectorAll('details').forEach(details => { details.open = true; })");
    }

    private static List<String> problems(Page page) {
        return page.locator(".problem, .message").allInnerTexts();
    }

    /** Names of the fields that are marked as wrong. */
    @SuppressWarnings("unchecked")
    private static Set<String> refused(Page page) {
        return new LinkedHashSet<>((List<String>) page.evaluate("""
                [...document.querySelectorAll('[aria-invalid=true]')].map(field => field.name)"""));
    }
}
