package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Rule;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No page breaks a rule of WCAG 2.2 AA that a machine can check, or is wider than a window of 1280 px. */
@Browsing
class AccessibilityJourney {

    static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    static List<Screen> screens() {
        return Screen.ALL;
    }

    @ParameterizedTest
    @MethodSource("screens")
    void everyoneCanUseIt(Screen screen, Visitor visitor) {
        screen.visit(visitor);
        AxeResults results = new AxeBuilder(visitor.page()).withTags(RULES).analyze();
        assertThat(results.getViolations()).extracting(AccessibilityJourney::inWords).isEmpty();
        assertThat(results.getPasses()).isNotEmpty();
        assertThat((int) visitor.page().evaluate("document.documentElement.scrollWidth"))
                .as("width of the page in a window of 1280 px").isLessThanOrEqualTo(1280);
    }

    private static String inWords(Rule rule) {
        List<String> where = rule.getNodes().stream().map(CheckedNode::getHtml).limit(5).toList();
        return rule.getId() + ": " + rule.getHelp() + ", at " + rule.getNodes().size() + " places such as " + where;
    }
}
