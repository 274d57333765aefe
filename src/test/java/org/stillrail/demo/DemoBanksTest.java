package org.stillrail.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.DrawnCurrent;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.FlybackCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.library.PartDocument;
import tools.jackson.databind.JsonNode;

/** The good banks are good and the bad ones bad for the reason that the story gives. */
class DemoBanksTest {

    private static final Set<String> TOO_MUCH_RIPPLE = Set.of("One big, one tiny", "Polymer round the corner");

    private static final DemoModels MODELS = new DemoModels();

    @Test
    void onlyTheBanksBuiltToTeachItMissTheRippleLimitAtAnyInput() {
        Map<String, Double> share = new TreeMap<>();
        latest((rail, bank, revision) -> {
            double limit = rail.ripple().peakToPeakV();
            InputRange input = rail.input();
            share.put(bank, DoubleStream.of(input.minimumV(), input.nominalV(), input.maximumV())
                    .map(inputV -> ripple(rail, inputV, revision) / limit).max().orElseThrow());
        });

        assertThat(share).hasSize(17);
        share.forEach((bank, part) -> {
            if (TOO_MUCH_RIPPLE.contains(bank)) {
                assertThat(part).as(bank).isGreaterThan(1.5);
            } else {
                assertThat(part).as(bank).isLessThan(0.75);
            }
        });
    }

    @Test
    void polymerRoundTheCornerRingsAtTheSwitchingFrequency() {
        latest((rail, bank, revision) -> {
            double switchingHz = rail.converter().switchingHz();
            boolean rings = MODELS.bank(revision).extrema(switchingHz / 2, switchingHz * 2).stream()
                    .anyMatch(extremum -> extremum.kind().name().equals("MAXIMUM") && extremum.qualityFactor() > 2);
            assertThat(rings).as(bank).isEqualTo(bank.equals("Polymer round the corner"));
        });
    }

    @Test
    void onlyTheTantalumPairIsUsedAboveHalfOfASolidTantalumsVoltage() {
        Set<String> overHalf = new TreeSet<>();
        latest((rail, bank, revision) -> parts(revision, part -> {
            if (part.technology() == Technology.TANTALUM_MNO2 && rail.nominalVoltageV() > part.ratedVoltageV() / 2) {
                overHalf.add(bank);
            }
            assertThat(rail.nominalVoltageV()).as(bank).isLessThanOrEqualTo(0.8 * part.ratedVoltageV());
        }));

        assertThat(overHalf).containsExactly("Tantalum pair");
    }

    @Test
    void onlyEverythingTwiceIsTooDearAndTooLarge() {
        latest((rail, bank, revision) -> {
            double[] cost = {0};
            double[] area = {0};
            for (JsonNode branch : revision.get("branches")) {
                PartDocument part = MODELS.part(branch.get("partNumber").stringValue());
                cost[0] += branch.get("count").intValue() * part.cost().doubleValue();
                area[0] += branch.get("count").intValue() * part.lengthM() * part.widthM();
                assertThat(part.heightM()).as(bank).isLessThanOrEqualTo(rail.space().heightM());
            }
            boolean oversized = bank.equals("Everything twice");
            assertThat(cost[0] > rail.space().cost().doubleValue()).as(bank).isEqualTo(oversized);
            assertThat(area[0] > rail.space().areaM2()).as(bank).isEqualTo(oversized);
        });
    }

    private static double ripple(RailFigures rail, double inputV, JsonNode revision) {
        ConverterFigures converter = rail.converter();
        Bank bank = MODELS.bank(revision);
        PeriodicCurrent current = switch (converter.topology()) {
            case FLYBACK -> new FlybackCurrent(inputV, rail.nominalVoltageV(), converter.inductanceH(), converter.turnsRatio(), converter.switchingHz(),
                    converter.phases(), rail.nominalCurrentA(), converter.edgeS());
            case DRAWN -> PiecewiseLinearCurrent.of(1 / converter.switchingHz(),
                    converter.drawnCurrent().points().stream().mapToDouble(DrawnCurrent.Point::timeS).toArray(),
                    converter.drawnCurrent().points().stream().mapToDouble(DrawnCurrent.Point::currentA).toArray());
            case BUCK, BOOST, INVERTING_BUCK_BOOST -> new BuckCurrent(inputV, rail.nominalVoltageV(), converter.inductanceH(), converter.switchingHz(),
                    converter.phases());
        };
        return Ripple.quickPeakToPeakV(bank, current);
    }

    private static void parts(JsonNode revision, Consumer<PartDocument> check) {
        revision.get("branches").forEach(branch -> check.accept(MODELS.part(branch.get("partNumber").stringValue())));
    }

    /** Calls with each bank's newest revision. */
    private static void latest(BankCheck check) {
        for (JsonNode project : DemoFile.read("projects.json").get("projects")) {
            for (JsonNode rail : project.get("rails")) {
                RailFigures figures = DemoFile.as(rail.get("figures"), RailFigures.class);
                for (JsonNode bank : rail.get("banks")) {
                    JsonNode revisions = bank.get("revisions");
                    check.of(figures, bank.get("name").stringValue(), revisions.get(revisions.size() - 1));
                }
            }
        }
    }

    /** One bank on its rail. */
    private interface BankCheck {
        void of(RailFigures rail, String bank, JsonNode revision);
    }
}
