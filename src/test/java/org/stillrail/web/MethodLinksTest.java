package org.stillrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.ui.ConcurrentModel;
import org.stillrail.electrical.requirement.Requirement;

class MethodLinksTest {

    @ParameterizedTest
    @EnumSource(Requirement.class)
    void everyVerdictLinksToAHeadingOfTheMethod(Requirement requirement) throws IOException {
        ConcurrentModel model = new ConcurrentModel();
        new DocumentController().method(model);
        assertThat((String) model.getAttribute("html")).contains("id=\"" + requirement.equation() + "\"");
    }

    @Test
    void methodAndVerificationLinkToEachOtherAsPages() throws IOException {
        ConcurrentModel model = new ConcurrentModel();
        new DocumentController().method(model);
        assertThat((String) model.getAttribute("html")).contains("href=\"verification\"");
        new DocumentController().verification(model);
        assertThat((String) model.getAttribute("html")).contains("href=\"method\"", "id=\"waveforms-and-ripple\"");
    }
}
