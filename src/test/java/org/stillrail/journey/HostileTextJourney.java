package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Whatever somebody types into a text field is shown as text, on every page where it comes up again. */
@Browsing
class HostileTextJourney {

    private static final String PICTURE = "<img src=x onerror=\"alert('part')\">";
    private static final String SCRIPT = "</div></script><script>alert('bank')</script>";
    private static final String EXPRESSION = "${7*7} [[${7*7}]] __${7*7}__ {{7*7}}";

    @Test
    void markupAndScriptsAreShownAsTheyWereTyped(Visitor engineer) {
        engineer.signInAs("engineer");
        engineer.open("/library/parts/new");
        engineer.fill("Part number", "<b>BITTERN</b>");
        engineer.fill("Maker", PICTURE);
        engineer.choose("Technology", "film");
        engineer.fill("Capacitance (F)", "1u");
        engineer.fill("Rated voltage (V)", "63");
        engineer.fill("Note", EXPRESSION);
        engineer.press("Propose the part");
        engineer.seesHeading("<b>BITTERN</b>");
        engineer.sees(PICTURE);
        engineer.sees(EXPRESSION);
        engineer.open("/library?text=BITTERN");
        engineer.sees(PICTURE);

        BankPage page = BankPage.scratch(engineer);
        page.choosePart(1, "<b>BITTERN</b>");
        page.type(1, "Name", SCRIPT);
        assertThat(page.readings()).contains(SCRIPT);
        engineer.fill("Name of the bank", SCRIPT);
        engineer.fill("Note", EXPRESSION);
        engineer.press("Save the bank");
        engineer.seesHeading(SCRIPT);
        assertThat(page.claim()).contains("<b>BITTERN</b>");
        assertThat(page.readings()).contains(SCRIPT);
        assertThat(engineer.field("Note").inputValue()).isEqualTo(EXPRESSION);

        engineer.open("/projects");
        engineer.fill("Name", PICTURE);
        engineer.fill("Purpose", SCRIPT);
        engineer.press("Start the project");
        engineer.seesHeading(PICTURE);
        engineer.sees(SCRIPT);
        engineer.open("/audit");
        engineer.sees("alert('bank')");

        assertThat(engineer.questions()).as("dialogs that a script opened").isEmpty();
        assertThat(engineer.page().locator("img").count()).isZero();
    }
}
