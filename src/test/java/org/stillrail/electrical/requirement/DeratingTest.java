package org.stillrail.electrical.requirement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.electrical.capacitor.Technology;

/**
 * Derating figures of public documents: MIL-STD-975M, appendix A 3.1 (DR-01 to DR-03) and RL-TR-92-11, table 9-2 (DR-04), both
 * seen second-hand in a transcription.
 */
class DeratingTest {

    private static final double EXACT = 1e-12;

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
        assertThat(of(published).shareAt(-55)).hasValue(share);
        assertThat(of(published).shareAt(lastC)).hasValue(share);
        assertThat(of(published).shareAt(lastC + 0.1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "MIL_STD_975M_SOLID_TANTALUM, 25, 0.5", "MIL_STD_975M_SOLID_TANTALUM, 70, 0.5", "MIL_STD_975M_SOLID_TANTALUM, 90, 0.4",
        "MIL_STD_975M_SOLID_TANTALUM, 110, 0.3",
        "MIL_STD_975M_WET_TANTALUM, 70, 0.6", "MIL_STD_975M_WET_TANTALUM, 100, 0.45", "MIL_STD_975M_WET_TANTALUM, 110, 0.4"})
    void aFallingRuleIsAStraightLine(PublishedDerating published, double temperatureC, double share) {
        assertThat(of(published).shareAt(temperatureC).orElseThrow()).isCloseTo(share, within(EXACT));
    }

    @Test
    void allowedVoltsOfTheDocumentsRules() {
        assertThat(35 * of(PublishedDerating.MIL_STD_975M_SOLID_TANTALUM).shareAt(90).orElseThrow()).isCloseTo(14, within(1e-9));
        assertThat(25 * of(PublishedDerating.MIL_STD_975M_CERAMIC).shareAt(110).orElseThrow()).isCloseTo(15, within(1e-9));
    }

    @Test
    void lowVoltageRuleOfTheDocument() {
        DeratingRule rule = PublishedDerating.MIL_STD_975M_CERAMIC.ruleWithLowVoltage(Technology.CERAMIC_CLASS_2);
        assertThat(rule.belowVoltageV()).isEqualTo(10);
        assertThat(rule.leastRatedVoltageV()).isEqualTo(100);
    }

    @Test
    void chipCeramicsKeepAShareOfTheirRatedTemperature() {
        assertThat(of(PublishedDerating.RL_TR_92_11_CERAMIC).share()).isEqualTo(0.6);
        assertThat(PublishedDerating.RL_TR_92_11_CERAMIC.ratedTemperatureShare()).isEqualTo(0.85);
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
