package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.support.DemoTest;
import org.stillrail.web.Form;

/** A part whose number was typed, by a browser that ran no script or by somebody who took nothing from the list. */
@DemoTest
class PartFieldTest {

    private static final String HERON = "HERON-470U-25";

    private final Library library;

    @Autowired
    PartFieldTest(Library library) {
        this.library = library;
    }

    private Form settled(String part, String number) {
        Form form = Form.empty().with("b0.part", part).with("b0.partNumber", number);
        PartField.settle(form, library);
        return form;
    }

    private Part heron() {
        return library.find(HERON).orElseThrow();
    }

    @Test
    void aWholeNumberReplacesWhatStoodThere() {
        assertThat(settled(BankForm.INLINE, " " + HERON + " ").get("b0.part")).isEqualTo(heron().id().toString());
        assertThat(settled(heron().id().toString(), "figures typed here").get("b0.part")).isEqualTo(BankForm.INLINE);
    }

    @Test
    void theNumberOfThePartThatStandsThereChangesNothing() {
        Form form = settled(heron().id().toString(), HERON);
        assertThat(form.get("b0.part")).isEqualTo(heron().id().toString());
        assertThat(form.errors().none()).isTrue();
    }

    @Test
    void aPieceOfANumberABlankAndAWithdrawnPartAreErrorsOfTheField() {
        assertThat(settled(BankForm.INLINE, "HERON").errors().of("b0.part")).contains("Branch 1").contains("'HERON'");
        assertThat(settled(BankForm.INLINE, " ").errors().of("b0.part")).contains("part is missing");
        assertThat(settled(BankForm.INLINE, "HERON-680U-16").errors().of("b0.part")).contains("is withdrawn");
    }

    @Test
    void aWithdrawnPartThatStandsThereAlreadyStays() {
        Part withdrawn = library.find("HERON-680U-16").orElseThrow();
        assertThat(settled(withdrawn.id().toString(), withdrawn.partNumber()).errors().none()).isTrue();
    }
}
