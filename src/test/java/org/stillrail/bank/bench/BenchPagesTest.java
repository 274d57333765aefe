package org.stillrail.bank.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.stillrail.account.Role;
import org.stillrail.bank.Banks;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;
import org.stillrail.sweepfile.SweepWriter;

/** The 'measured' board is the closed form of the composed bank with a mounting that its page does not know. */
@AppTest
class BenchPagesTest {

    private static final SeriesRlc BULK = new SeriesRlc(330e-6, 8e-3, 4e-9);
    private static final SeriesRlc CERAMIC = new SeriesRlc(10e-6, 3e-3, 0.5e-9);
    private static final SeriesPath BULK_MOUNTING = new SeriesPath(2e-3, 2.5e-9);
    private static final SeriesPath CERAMIC_MOUNTING = new SeriesPath(0.7e-3, 0.6e-9);

    @Autowired
    MockMvc mvc;

    @Autowired
    TestPeople people;

    @Autowired
    Banks banks;

    @Autowired
    ApplicationContext context;

    @Test
    void theHiddenMountingIsFoundAndWrittenBackToANewRevision() throws Exception {
        UUID bankId = composed("Bench mounting");
        String path = "/banks/" + bankId + "/revisions/1/bench";
        mvc.perform(attach(path, "board.csv", board()).param("kind", "impedance").param("fixture", "impedance").param("bias", "0")
                .param("temperature", "25").param("tolerance", "20").param("resistanceTolerance", "50")).andExpect(redirectedUrl(path));
        String page = mvc.perform(get(path).with(people.as(Role.ENGINEER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("The prediction misses")))
                .andExpect(content().string(containsString("round the resonance at")))
                .andReturn().getResponse().getContentAsString();
        String record = page.replaceAll("(?s).*/bench/([0-9a-f-]{36})/mounting.*", "$1");
        mvc.perform(get(path + "/" + record + "/raw").with(people.as(Role.VIEWER))).andExpect(content().bytes(board()));
        mvc.perform(post(path + "/" + record + "/mounting").param("version", "17").with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(content().string(containsString("Nothing was overwritten")));
        mvc.perform(post(path + "/" + record + "/mounting").param("version", Long.toString(banks.require(bankId).version()))
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(redirectedUrl("/banks/" + bankId));

        org.stillrail.bank.Bank saved = banks.require(bankId);
        assertThat(saved.latestNumber()).isEqualTo(2);
        assertNear(saved.document().branches().get(0).mounting(), BULK_MOUNTING);
        assertNear(saved.document().branches().get(1).mounting(), CERAMIC_MOUNTING);
        assertThat(banks.require(bankId, 1).document().branches().get(0).mounting()).isEqualTo(SeriesPath.NONE);

        String second = "/banks/" + bankId + "/revisions/2/bench";
        mvc.perform(attach(second, "board.csv", board()).param("kind", "impedance").param("fixture", "impedance").param("bias", "0")
                .param("temperature", "25").param("tolerance", "20").param("resistanceTolerance", "50")).andExpect(redirectedUrl(second));
        mvc.perform(get(second).with(people.as(Role.VIEWER))).andExpect(content().string(containsString("The prediction is within")));
        mvc.perform(get("/banks/" + bankId).with(people.as(Role.ENGINEER)))
                .andExpect(content().string(containsString("One record of the bench is attached")));
    }

    @Test
    void loopRippleAndStepAreDrawnOverThePrediction() throws Exception {
        UUID bankId = composed("Bench traces");
        String path = "/banks/" + bankId + "/revisions/1/bench";
        mvc.perform(attach(path, "loop.csv", bytes("f/kHz,dB,deg\n10,12,70\n20,6,65\n40,-6,45\n")).param("kind", "loop")
                .param("frequencyUnit", "k").param("phaseIs", "margin")).andExpect(redirectedUrl(path));
        mvc.perform(attach(path, "ripple.csv", bytes("us,mV\n0,1\n0.5,3\n1,-2\n1.5,0\n2,1\n2.5,3\n3,-2\n")).param("kind", "ripple")
                .param("timeUnit", "u").param("voltageUnit", "m").param("bandwidth", "20M")).andExpect(redirectedUrl(path));
        mvc.perform(attach(path, "step.csv", bytes("t,V\n-1e-6,3.30\n0,3.30\n1e-6,3.25\n2e-6,3.31\n")).param("kind", "step")
                .param("bandwidth", "20M")).andExpect(redirectedUrl(path));
        mvc.perform(get(path).with(people.as(Role.ENGINEER))).andExpect(status().isOk())
                // The gain falls through 0 dB half-way between 20 and 40 kHz over log f, the margin there is half-way too.
                .andExpect(content().string(containsString("crossover 28.3\u00a0kHz, phase margin 55\u00a0\u00b0")))
                .andExpect(content().string(containsString("5\u00a0mV peak to peak over the whole trace")))
                .andExpect(content().string(containsString("down 50\u00a0mV, up 10\u00a0mV from the voltage before the step")));
    }

    @Test
    void aTraceThatIsNoneIsRefusedWithItsLineAndNothingIsStored() throws Exception {
        UUID bankId = composed("Bench refusal");
        String path = "/banks/" + bankId + "/revisions/1/bench";
        mvc.perform(attach(path, "bad.csv", bytes("t,V\n0,1\n1,2\n0.5,3\n")).param("kind", "step").param("bandwidth", "20M"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Line 4: the first column must rise")));
        mvc.perform(attach(path, "a.csv", bytes("t,V\n0,1\n1,2\n")).param("kind", "ripple"))
                .andExpect(content().string(containsString("Bandwidth of the oscilloscope is missing")));
        mvc.perform(get(path).with(people.as(Role.ENGINEER))).andExpect(content().string(containsString("Nothing is attached")));
    }

    @Test
    void onlyWhoMayChangeTheBankAttachesToIt() throws Exception {
        UUID bankId = composed("Bench of one owner");
        String path = "/banks/" + bankId + "/revisions/1/bench";
        for (Role role : new Role[] {Role.LIBRARIAN, Role.REVIEWER}) {
            mvc.perform(attach(path, "board.csv", board()).param("kind", "impedance").param("fixture", "impedance").param("bias", "0")
                    .param("temperature", "25").param("tolerance", "20").param("resistanceTolerance", "50").with(people.as(role)))
                    .andExpect(status().isForbidden());
            mvc.perform(get(path).with(people.as(role))).andExpect(content().string(not(containsString("Attach a measurement"))))
                    .andExpect(content().string(containsString("The owner of this scratch bank attaches measurements")))
                    .andExpect(content().string(containsString("Nothing is attached")));
        }
        mvc.perform(get(path).with(people.as(Role.ENGINEER))).andExpect(content().string(containsString("Attach a measurement")));
    }

    @Test
    void onABankOfAProjectOnlyItsEngineersAttachAndTheSameBytesOnce() throws Exception {
        org.stillrail.bank.Bank bank = new TeamBench(context, people.with(Role.ENGINEER)).addBank(4);
        String path = "/banks/" + bank.id() + "/revisions/1/bench";
        byte[] trace = bytes("t,V\n0,3.3\n1e-6,3.2\n2e-6,3.3\n");
        mvc.perform(attach(path, "ripple.csv", trace).param("kind", "ripple").param("bandwidth", "20M")
                .with(people.as(people.another(Role.ENGINEER)))).andExpect(status().isForbidden());
        mvc.perform(get(path).with(people.as(people.another(Role.ENGINEER)))).andExpect(content().string(not(containsString("Attach a measurement"))))
                .andExpect(content().string(containsString("Nothing is attached")));
        mvc.perform(attach(path, "ripple.csv", trace).param("kind", "ripple").param("bandwidth", "20M")).andExpect(redirectedUrl(path));
        mvc.perform(attach(path, "again.csv", trace).param("kind", "ripple").param("bandwidth", "20M"))
                .andExpect(content().string(containsString("attached to this revision already, as ripple.csv")));
        mvc.perform(get(path).with(people.as(Role.VIEWER))).andExpect(content().string(containsString("not the timing")));
    }

    @Test
    void theSheetNamesMixesFrequenciesAndWhatToExpect() throws Exception {
        UUID bankId = composed("Bench sheet");
        mvc.perform(get("/banks/" + bankId + "/revisions/1/bench/sheet").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("with 3 \u00d7 bulk")))
                .andExpect(content().string(containsString("3.3\u00a0V of bias and 25\u00a0\u00b0C")))
                .andExpect(content().string(containsString("crossover")))
                .andExpect(content().string(containsString("500\u00a0kHz")));
        mvc.perform(get("/banks/" + bankId + "/revisions/1/export/touchstone-z").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("# Hz Z RI R 1")));
    }

    private UUID composed(String name) throws Exception {
        String location = mvc.perform(post("/scratch").with(people.as(Role.ENGINEER)).with(csrf()).param("name", name)
                        .param("input", "12 V").param("output", "3.3").param("inductor", "3u3").param("switching", "500k").param("phases", "1")
                        .param("crossover", "40k").param("phaseMargin", "55")
                        .param("b0.part", "inline").param("b0.label", "bulk").param("b0.count", "2").param("b0.capacitance", "330u")
                        .param("b0.resistance", "8m").param("b0.inductance", "4n")
                        .param("b1.part", "inline").param("b1.label", "ceramic").param("b1.count", "4").param("b1.capacitance", "10u")
                        .param("b1.resistance", "3m").param("b1.inductance", "0.5n"))
                .andExpect(redirectedUrlPattern("/banks/*")).andReturn().getResponse().getRedirectedUrl();
        return UUID.fromString(location.substring("/banks/".length()));
    }

    private MockMultipartHttpServletRequestBuilder attach(String path, String name, byte[] bytes) {
        MockMultipartHttpServletRequestBuilder request = multipart(path);
        request.file(new MockMultipartFile("file", name, "text/csv", bytes)).param("measuredBy", "someone").param("measuredOn", "2031-03-04")
                .param("instrument", "invented").with(people.as(Role.ENGINEER)).with(csrf());
        return request;
    }

    private static byte[] board() {
        Bank real = new Bank(List.of(new Branch("bulk", 2, BULK, BULK_MOUNTING, SeriesPath.NONE),
                new Branch("ceramic", 4, CERAMIC, CERAMIC_MOUNTING, SeriesPath.NONE)));
        return bytes(SweepWriter.csv(real.on(FrequencyGrid.logSpaced(1e3, 50e6, 300)).bank(), List.of("invented")));
    }

    private static void assertNear(SeriesPath found, SeriesPath truth) {
        assertThat(found.resistanceOhm()).isCloseTo(truth.resistanceOhm(), within(0.05 * truth.resistanceOhm()));
        assertThat(found.inductanceH()).isCloseTo(truth.inductanceH(), within(0.05 * truth.inductanceH()));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
