package org.stillrail.bank.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

@AppTest
class SpreadPagesTest {

    private static final String QUESTION = "?runs=500&seed=42&shape=uniform&parts=lot&ambient=nominal&age=new&input=nominal";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    private Bank bank() {
        return new TeamBench(context, people.with(Role.ENGINEER)).addBank(4);
    }

    private static String path(Bank bank) {
        return "/banks/" + bank.id() + "/revisions/" + bank.revision().number() + "/spread";
    }

    private ResultActions open(String address) throws Exception {
        return mvc.perform(get(address).with(people.as(Role.VIEWER)));
    }

    private String text(String address) throws Exception {
        return open(address).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
    }

    @Test
    void theBankLeadsThereAndWhatIsAskedStandsInTheAddress() throws Exception {
        Bank bank = bank();
        open("/banks/" + bank.id()).andExpect(content().string(containsString("href=\"" + path(bank) + "\">How does it spread?")));
        open(path(bank)).andExpect(redirectedUrl(path(bank) + "?runs=5000&seed=1&shape=uniform&parts=lot&ambient=nominal&age=new&input=nominal&stress=out&step=out"));
        open(path(bank) + QUESTION).andExpect(status().isOk())
                .andExpect(content().string(containsString("of 500 random banks keep all limits below")))
                .andExpect(content().string(containsString("Clopper and Pearson")))
                .andExpect(content().string(containsString("even between the bounds")))
                .andExpect(content().string(containsString("No smallest ESR is stated for &#39;bulk&#39;")))
                .andExpect(content().string(containsString("settings of today")))
                .andExpect(content().string(containsString("The ripple is that of continuous conduction")))
                .andExpect(content().string(containsString("at most 10\u00a0mV")))
                .andExpect(content().string(containsString("id=\"ripple-data\"")));
    }

    /** Only where it is asked for, by name and for each branch. */
    @Test
    void theStressOfThePartsIsDrawnWhereItIsAskedFor() throws Exception {
        Bank bank = bank();
        open(path(bank) + QUESTION).andExpect(content().string(containsString("Not drawn: load step, window, bulk charge, gain margin, start-up, reverse voltage, ripple current, temperature, life, voltage rating.")))
                .andExpect(content().string(not(containsString("Core temperature of"))));
        open(path(bank) + QUESTION + "&stress=drawn").andExpect(status().isOk())
                .andExpect(content().string(containsString("Core temperature of &#39;bulk&#39;")))
                .andExpect(content().string(containsString("Voltage rating of &#39;bulk&#39;")))
                .andExpect(content().string(containsString("id=\"ripple-current-0-data\"")))
                .andExpect(content().string(not(containsString("id=\"voltage-share-0-data\""))))
                .andExpect(content().string(containsString("has no chart")))
                .andExpect(content().string(containsString("Not drawn: load step, window, bulk charge, gain margin, start-up, reverse voltage.")))
                .andExpect(content().string(containsString("those at the warmth of the nominal bank")))
                .andExpect(content().string(containsString("value=\"drawn\" selected=\"selected\"")));
        assertThat(text(path(bank) + ".csv" + QUESTION + "&stress=drawn").lines())
                .anyMatch(line -> line.startsWith("Ripple current of 'bulk',A,"))
                .anyMatch(line -> line.contains("Limit: Voltage rating of 'bulk',,") && line.contains(",at most,1.0,500,"))
                .anyMatch(line -> line.endsWith("; stress of each branch's parts drawn too"));
        open(path(bank) + QUESTION + "&stress=perhaps").andExpect(content().string(containsString("Choose one of the list")));
    }

    /** It takes longer for each bank, so fewer are allowed; the field is named and what was typed stays. */
    @Test
    void theLoadStepIsDrawnOfFewerBanks() throws Exception {
        Bank bank = bank();
        String many = QUESTION.replace("runs=500", "runs=2001") + "&step=drawn";
        open(path(bank) + many).andExpect(status().isOk())
                .andExpect(content().string(containsString("Number of banks must be from 1 to 2000 where the load step is drawn")))
                .andExpect(content().string(containsString("value=\"2001\"")))
                .andExpect(content().string(not(containsString("random banks keep"))));
        open(path(bank) + ".csv" + many).andExpect(status().isBadRequest());
        open(path(bank) + QUESTION.replace("runs=500", "runs=20") + "&step=drawn").andExpect(status().isOk())
                .andExpect(content().string(containsString("of 20 random banks keep all limits below")))
                .andExpect(content().string(containsString("The rail states no load step.")));
    }

    @Test
    void theSameSeedDrawsTheSameBanksAndAnotherSeedOthers() throws Exception {
        Bank bank = bank();
        String once = text(path(bank) + ".csv" + QUESTION);
        assertThat(text(path(bank) + ".csv" + QUESTION)).isEqualTo(once);
        assertThat(text(path(bank) + ".csv" + QUESTION.replace("seed=42", "seed=43"))).isNotEqualTo(once);
        List<String> lines = once.lines().toList();
        assertThat(lines.subList(0, 2)).containsExactly("# Bank " + bank.name() + ", revision 1, in work",
                "# SHA-256 of the revision: " + bank.revision().sha256());
        assertThat(lines).anyMatch(line -> line.startsWith("figure,unit,nominal,least,quantile_0.01"))
                .anyMatch(line -> line.startsWith("\"Ripple, peak to peak\",V,")).anyMatch(line -> line.startsWith("'|Z| at crossover,ohm,"))
                .anyMatch(line -> line.startsWith("Limit: Ripple,V,") && line.contains(",at most,0.01,500,"));
    }

    @Test
    void wrongFieldsAreNamedAndWhatWasTypedStays() throws Exception {
        Bank bank = bank();
        open(path(bank) + "?runs=1e9&seed=seven&shape=odd&parts=lot&ambient=nominal&age=new&input=nominal").andExpect(status().isOk())
                .andExpect(content().string(containsString("Number of banks must be a whole number, not &#39;1e9&#39;")))
                .andExpect(content().string(containsString("Seed must be a whole number, not &#39;seven&#39;")))
                .andExpect(content().string(containsString("Choose one of the list")))
                .andExpect(content().string(containsString("value=\"seven\"")))
                .andExpect(content().string(not(containsString("random banks keep"))));
        open(path(bank) + "?runs=50001&seed=1").andExpect(content().string(containsString("Number of banks must be from 1 to 50000")))
                .andExpect(content().string(containsString("Distribution is missing")));
        open(path(bank) + ".csv?runs=0&seed=1").andExpect(status().isBadRequest());
    }

    @Test
    void aScratchBankOfTypedFiguresDoesNotStrayAndSaysSo() throws Exception {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        Bank bank = TeamBench.as(engineer, () -> context.getBean(Banks.class).add(null, "Spread =1 " + UUID.randomUUID(),
                new BankDocument(null, TeamBench.figures(3.3, 5, 500e3, null), List.of(
                        new BranchDocument("<b>typed</b>", 2, null, null, new SeriesRlc(330e-6, 0.03, 5e-9), SeriesPath.NONE, SeriesPath.NONE)), null),
                engineer));
        open(path(bank) + QUESTION).andExpect(status().isOk())
                .andExpect(content().string(containsString("No tolerance of the capacitance is stated for &#39;&lt;b&gt;typed&lt;/b&gt;&#39;")));
        open(path(bank) + ".csv" + QUESTION).andExpect(header().string("Content-Disposition", containsString("spread.csv")));
    }

    @Test
    void aRevisionThatDoesNotExistIsNotFound() throws Exception {
        open("/banks/" + UUID.randomUUID() + "/revisions/1/spread" + QUESTION).andExpect(status().isNotFound());
        open("/banks/" + bank().id() + "/revisions/9/spread" + QUESTION).andExpect(status().isNotFound());
    }
}
