package org.stillrail.journey;

import com.microsoft.playwright.Page;
import java.util.List;

/**
 * Text that runs, or becomes part of a page, where it is not taken as text: it closes attributes, elements and scripts, holds
 * handlers, expressions of the template engine and of others, and begins as an address that runs or as a formula of a table.
 */
final class HostileText {

    private static final String MARKUP = "\"'`></textarea></title></script><zz-ran onclick=window.ran=1>x</zz-ran><img src=x onerror=window.ran=2>"
            + "<script>window.ran=3</script>zq${7*7}zq[[${7*7}]]zq__${7*7}__zq{{7*7}}zq#{7*7}zq*{7*7}zq~{error}";

    /** For a file, whose name holds no slash. */
    static final String FILE_NAME = "<zz-ran onclick=window.ran=1><img src=x onerror=window.ran=2>zq${7*7}zq";

    private int made;

    /** Another one each time, so that it can be told where it is shown. */
    String next() {
        made++;
        return (made % 2 == 0 ? "=1+1" : "javascript:window.ran=4") + MARKUP + " no. " + made + " end";
    }

    /** As {@link #next}, for a name that has to be short. */
    String nextBrief() {
        made++;
        return "\"><zz-ran onclick=window.ran=1>zq${7*7}zq no. " + made + " end";
    }

    static boolean is(String text) {
        return text.contains("<zz-ran");
    }

    /** What of it took effect on a page; empty where all of it stayed text. */
    @SuppressWarnings("unchecked")
    static List<String> effectsOn(Page page) {
        return (List<String>) page.evaluate("""
                () => [
                  ...[...document.querySelectorAll('zz-ran, [onclick], [onerror], [src="x"]')].map(element => 'element ' + element.outerHTML.slice(0, 120)),
                  ...[...document.querySelectorAll('[href], [src], [action], [formaction]')]
                    .flatMap(element => ['href', 'src', 'action', 'formaction'].map(name => element.getAttribute(name)))
                    .filter(address => address && address.trim().startsWith('javascript:')).map(address => 'address ' + address.slice(0, 60)),
                  ...(window.ran === undefined ? [] : ['script ' + window.ran]),
                  ...(document.documentElement.outerHTML.match(/zq_*49/) || []).map(() => 'expression')]""");
    }

    /** Everything that somebody can read on a page, what stands in its fields and choices too. */
    static String shownOn(Page page) {
        return (String) page.evaluate("""
                () => {
                  document.querySelectorAll('details').forEach(details => { details.open = true; });
                  return [document.body.innerText,
                    ...[...document.querySelectorAll('input, textarea')].map(field => field.value),
                    ...[...document.querySelectorAll('option')].map(option => option.text),
                    ...[...document.querySelectorAll('[title]')].map(element => element.title)].join('\\n');
                }""");
    }
}
