package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.stillrail.web.Form;

class CharacteristicsFormTest {

    /** 100 times 0.55 is not 55 in binary numbers. */
    @Test
    void aCurveIsFilledInAsItWasTyped() {
        Form form = Form.empty().with("overTemperature", "-40 degC: 76 %; 105 degC: 55 %; 20 degC: 28.7 %");
        PartCharacteristics read = CharacteristicsForm.read(form);
        Form again = Form.empty();
        CharacteristicsForm.fill(again, read);
        assertThat(again.get("overTemperature")).isEqualTo("-40 degC: 76 %; 20 degC: 28.7 %; 105 degC: 55 %");
        assertThat(CharacteristicsForm.read(again)).isEqualTo(read);
    }

    @Test
    void whatIsNoPointIsQuotedAtItsField() {
        Form form = Form.empty().with("overBias", "0 V: 100 %; 5 V is 72 %");
        CharacteristicsForm.read(form);
        assertThat(form.errors().of("overBias")).contains("write points as 0 V: 100 %; 5 V: 72 %, not '5 V is 72 %'");
    }
}
