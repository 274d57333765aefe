package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.Role;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class BulkPartsTest {

    private static final String HEADING = "partNumber,maker,technology,capacitance,toleranceMinus,tolerancePlus,ratedVoltage,loss0Kind,loss0Value,loss0Frequency,loss0Bound\n";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private Library library;

    private final String unique = "BULK-" + UUID.randomUUID().toString().substring(0, 8);

    private String line(int n, String capacitance) {
        return unique + "-" + n + ",\"Maker, invented\",film," + capacitance + ",10 %,10 %,63,ESR,5m,100k,TYPICAL\n";
    }

    private String preview(String csv) throws Exception {
        return mvc.perform(multipart("/library/bulk/preview").file(new MockMultipartFile("file", "parts.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)))
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
    }

    private static String seen(String page) {
        Matcher found = Pattern.compile("name=\"seen\" value=\"([0-9a-f]{64})\"").matcher(page);
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    @Test
    void aTableIsPreviewedAndThenStoredAsAWhole() throws Exception {
        String csv = HEADING + line(1, "1u") + line(2, "2u2");
        String page = preview(csv);
        assertThat(page).contains("2 new, 0 revised, 0 unchanged, 0 refused.");
        assertThat(library.find(unique + "-1")).isEmpty();
        mvc.perform(post("/library/bulk").param("csv", csv).param("seen", seen(page)).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(redirectedUrl("/library"));
        assertThat(library.find(unique + "-2").orElseThrow().document().capacitanceF()).isEqualTo(2.2e-6);
        String again = preview(HEADING + line(1, "1u") + line(2, "4u7"));
        assertThat(again).contains("0 new, 1 revised, 1 unchanged, 0 refused.", "Capacitance: 2.2 uF becomes 4.7 uF");
    }

    @Test
    void oneRefusedLineStoresNothingAndEveryRefusalHasItsLine() throws Exception {
        String csv = HEADING + line(1, "1u") + line(2, "plenty") + line(1, "1u");
        String page = preview(csv);
        assertThat(page).contains("2 refused", "&#39;plenty&#39; is not a number", "stands in the table twice", "Nothing can be stored");
        mvc.perform(post("/library/bulk").param("csv", csv).param("seen", "").with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().isOk());
        assertThat(library.find(unique + "-1")).isEmpty();
    }

    @Test
    void whatWasPreviewedIsWhatIsStored() throws Exception {
        String page = preview(HEADING + line(1, "1u"));
        mvc.perform(post("/library/bulk").param("csv", HEADING + line(1, "9u")).param("seen", seen(page)).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(status().isOk()).andExpect(content().string(containsString("has changed since the preview")));
        assertThat(library.find(unique + "-1")).isEmpty();
    }

    @Test
    void whatIsNoTableOfPartsIsSaidInWords() throws Exception {
        assertThat(preview("a,b\n1,2\n")).contains("among them partNumber");
        assertThat(preview(HEADING.replace("maker", "makr") + line(1, "1u"))).contains("There is no column &#39;makr&#39;");
        assertThat(preview(HEADING + "only-one-cell\n")).contains("Line 2 has 1 cells");
        assertThat(preview(HEADING)).contains("There is no line with a part");
        assertThat(preview("partNumber,\"unclosed\n1")).contains("This is not comma-separated text");
        assertThatThrownBy(() -> PartsCsv.read("")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatGoesOutComesInUnchangedAndFormulasAreDefused() throws Exception {
        String csv = HEADING + "=1+" + unique + ",@maker,film,1u,10 %,10 %,63,,,,\n";
        mvc.perform(post("/library/bulk").param("csv", csv).param("seen", seen(preview(csv))).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(redirectedUrl("/library"));
        String out = mvc.perform(get("/library/parts.csv").with(people.as(Role.VIEWER))).andExpect(status().isOk()).andReturn().getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
        String line = out.lines().filter(each -> each.contains("=1+" + unique)).findFirst().orElseThrow();
        assertThat(line).startsWith("'=1+" + unique + ",'@maker,");
        assertThat(preview(out.lines().findFirst().orElseThrow() + "\n" + line + "\n")).contains("0 new, 0 revised, 1 unchanged, 0 refused.");
        mvc.perform(get("/library/bulk").with(people.as(Role.ENGINEER))).andExpect(content().string(allOf(containsString("Parts in bulk"), containsString("loss23Bound"))));
    }
}
