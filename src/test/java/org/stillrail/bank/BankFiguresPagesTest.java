package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.Role;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

/** What the bank page tells beside its verdicts: each figure with its unit and a way to how it comes about. */
@AppTest
class BankFiguresPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    private String text(String address) throws Exception {
        return mvc.perform(get(address).with(people.as(Role.VIEWER))).andExpect(status().isOk()).andReturn().getResponse().getContentAsString()
                .replace('\u00a0', ' ');
    }

    private String page(double crossoverHz) throws Exception {
        TeamBench team = new TeamBench(context, people.with(Role.ENGINEER));
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, null, null, null, crossoverHz, 60.0);
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, 2.2e-6, 20, 0.01, 1, 500e3, 5, control, 15.0);
        RailFigures figures = new RailFigures(3.3, 5, InputRange.fixed(12), converter, new RippleLimit(0.010, null), null,
                new LoadStep(1, 5, 10e6, 0.1, null), null, new Ambient(0, 25, 60, null), null, null);
        Bank bank = team.addBank(team.addRail("LOOPED", figures), 4);
        return text("/banks/" + bank.id());
    }

    @Test
    void thePlacedCompensatorIsListedWithItsPartsAndLeadsToHowItIsPlaced() throws Exception {
        String page = page(30e3);
        assertThat(page).contains("Compensator in use")
                .containsPattern("Type I{2,3}, an integrator with (one|two) zeros? and (one|two) poles?, placed for a crossover of 30 kHz and a phase margin of 60 °")
                .containsPattern("<td>Integrator gain</td>\\s*<td class=\"figure\">[0-9.]+ [kM]?rad/s</td>")
                .containsPattern("<td>R1</td>\\s*<td class=\"figure\">10 kΩ</td>")
                .containsPattern("<td>C2</td>\\s*<td class=\"figure\">[0-9.]+ [pnµ]F</td>")
                .contains("href=\"/method#placing-a-compensator\"");
    }

    @Test
    void aCompensatorThatCannotBePlacedIsSaidInWords() throws Exception {
        assertThat(page(300e3)).contains("Compensator in use").contains("must stay below half the switching frequency").doesNotContain("<td>R1</td>");
    }

    /** A heading of the method that is renamed must not leave a link to nowhere. */
    @Test
    void everyLinkToTheMethodMeetsAHeading() throws Exception {
        String method = text("/method");
        List<String> anchors = Pattern.compile("href=\"/method#([^\"]+)\"").matcher(page(30e3)).results().map(each -> each.group(1)).distinct().toList();
        assertThat(anchors).contains("impedance", "ripple", "loop", "load-step", "placing-a-compensator", "verdict-ripple-current", "stored-charge-and-energy",
                "bleeding", "start-up");
        assertThat(anchors).allSatisfy(anchor -> assertThat(method).contains("id=\"" + anchor + "\""));
    }

    @Test
    void theStressTableNamesTheRulesAndVerdictsLeadToIt() throws Exception {
        String page = page(30e3);
        assertThat(page).contains("Rule: common practice, no source.",
                "Rule: the datasheet&#39;s own ratings, nothing taken off (common practice, no source).")
                .containsPattern("<span class=\"figure\">unknown</span>\\s*<div class=\"small\">The datasheet figure for life is missing.</div>")
                .contains("id=\"stress-0\"", "href=\"#stress-0\"");
        Matcher targets = Pattern.compile("<a class=\"small nowrap\" href=\"#([^\"]+)\"").matcher(page);
        assertThat(targets.results().map(each -> each.group(1)).toList()).isNotEmpty()
                .allSatisfy(target -> assertThat(page).contains("id=\"" + target + "\""));
    }

    @Test
    void theTargetImpedanceIsTheAllowedDeviationOverTheStep() throws Exception {
        assertThat(page(30e3)).containsPattern("<td>Target impedance</td>\\s*<td class=\"figure\">25 mΩ</td>");
    }
}
