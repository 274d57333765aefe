package org.stillrail.electrical.requirement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Derating figures of public documents, DR-01 to DR-04. */
class DeratingTest {

    private static final Source MIL_STD_975M = Source.seenSecondHand("MIL-STD-975M (NASA), 1994, appendix A 3.1, in a public transcription");
    private static final Source RL_TR_92_11 = Source.seenSecondHand("RL-TR-92-11 (Rome Laboratory, 1992), table 9-2, in a public transcription");

    private static Source source(PublishedDerating published) {
        return published.name().startsWith("MIL") ? MIL_STD_975M : RL_TR_92_11;
    }

    private static String name(PublishedDerating published) {
        return published.name().replace("MIL_STD_975M_", "").replace("RL_TR_92_11_", "chip ").replace('_', ' ').toLowerCase(Locale.ROOT);
    }

    private static DeratingRule of(PublishedDerating published) {
        return published.rule(Technology.TANTALUM_MNO2);
    }

    @ParameterizedTest
    @CsvSource({
        "MIL_STD_975M_CERAMIC, 0.6, 110",
        "MIL_STD_975M_GLASS, 0.5, 110",
        "MIL_STD_975M_FILM, 0.6, 85",
        "MIL_STD_975M_TANTALUM_FOIL, 0.5, 70",
        "RL_TR_92_11_SOLID_TANTALUM, 0.6, 85"})
    void aFlatRuleEndsAtItsTemperature(PublishedDerating published, double share, double lastC) {
        Check.that(Topic.STRESS, "Voltage rule of " + name(published) + ": share at -55 degC and at its last temperature of " + lastC + " degC")
                .source(source(published)).expected("", share, share).got(of(published).shareAt(-55).orElseThrow(), of(published).shareAt(lastC).orElseThrow());
        assertThat(of(published).shareAt(lastC + 0.1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "MIL_STD_975M_SOLID_TANTALUM, 25, 0.5", "MIL_STD_975M_SOLID_TANTALUM, 70, 0.5", "MIL_STD_975M_SOLID_TANTALUM, 90, 0.4",
        "MIL_STD_975M_SOLID_TANTALUM, 110, 0.3",
        "MIL_STD_975M_WET_TANTALUM, 70, 0.6", "MIL_STD_975M_WET_TANTALUM, 100, 0.45", "MIL_STD_975M_WET_TANTALUM, 110, 0.4"})
    void aFallingRuleIsAStraightLine(PublishedDerating published, double temperatureC, double share) {
        Check.that(Topic.STRESS, "Voltage rule of " + name(published) + " at " + temperatureC + " degC").source(source(published)).expected("", share)
                .absolute(1e-12).got(of(published).shareAt(temperatureC).orElseThrow());
    }

    @Test
    void allowedVoltsOfTheDocumentsRules() {
        Check.that(Topic.STRESS, "Allowed voltage: solid tantalum of 35 V at 90 degC, ceramic of 25 V at 110 degC").source(MIL_STD_975M).expected("V", 14, 15)
                .absolute(1e-9).got(35 * of(PublishedDerating.MIL_STD_975M_SOLID_TANTALUM).shareAt(90).orElseThrow(),
                        25 * of(PublishedDerating.MIL_STD_975M_CERAMIC).shareAt(110).orElseThrow());
    }

    @Test
    void lowVoltageRuleOfTheDocument() {
        DeratingRule rule = PublishedDerating.MIL_STD_975M_CERAMIC.ruleWithLowVoltage(Technology.CERAMIC_CLASS_2);
        Check.that(Topic.STRESS, "Ceramics used below the first voltage need a rating of the second").source(MIL_STD_975M).expected("V", 10, 100)
                .got(rule.belowVoltageV(), rule.leastRatedVoltageV());
    }

    @Test
    void chipCeramicsKeepAShareOfTheirRatedTemperature() {
        Check.that(Topic.STRESS, "Chip ceramics: share of the rated voltage and of the rated temperature").source(RL_TR_92_11).expected("", 0.6, 0.85)
                .got(of(PublishedDerating.RL_TR_92_11_CERAMIC).share(), PublishedDerating.RL_TR_92_11_CERAMIC.ratedTemperatureShare());
    }

    @ParameterizedTest
    @EnumSource(Technology.class)
    void everyTechnologyHasADefaultThatSaysItsSource(Technology technology) {
        DeratingRule rule = DeratingRules.DEFAULT.of(technology).orElseThrow();
        assertThat(rule.source()).containsAnyOf("MIL-STD-975M", "common practice, no source");
        assertThat(rule.shareAt(25)).isPresent();
    }

    @Test
    void aTeamReplacesOneRuleAndKeepsTheOthers() {
        DeratingRules changed = DeratingRules.DEFAULT.with(DeratingRule.constant(Technology.FILM, 0.7, "our own"));
        assertThat(changed.of(Technology.FILM).orElseThrow().share()).isEqualTo(0.7);
        assertThat(changed.rules()).hasSameSizeAs(DeratingRules.DEFAULT.rules());
        assertThat(changed.of(Technology.HYBRID)).isEqualTo(DeratingRules.DEFAULT.of(Technology.HYBRID));
    }

    @Test
    void nonsenseIsRefusedByName() {
        assertThatThrownBy(() -> DeratingRule.constant(Technology.FILM, 1.1, "x")).hasMessageContaining("share must be above 0");
        assertThatThrownBy(() -> new DeratingRule(Technology.FILM, 0.5, 85.0, 0.4, 80.0, null, null, "x")).hasMessageContaining("secondC");
        assertThatThrownBy(() -> new DeratingRule(Technology.FILM, 0.5, 85.0, 0.4, null, null, null, "x")).hasMessageContaining("secondShare");
        DeratingRule rule = DeratingRule.constant(Technology.FILM, 0.5, "x");
        assertThatThrownBy(() -> new DeratingRules(Arrays.asList(rule, rule))).hasMessageContaining("one derating rule only");
    }
}
