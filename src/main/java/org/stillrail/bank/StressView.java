package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.evaluation.BankStress;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.BranchStress;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.StoredCharge;
import org.stillrail.electrical.requirement.DeratingRule;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.stress.Bleed;
import org.stillrail.electrical.stress.LifeEstimate;
import org.stillrail.electrical.stress.LifeRule;
import org.stillrail.electrical.stress.PartStress;
import org.stillrail.electrical.stress.StartUp;
import org.stillrail.web.Quantity;

/**
 * What the parts of a bank bear, a row for each branch, and what the bank holds, in words.
 *
 * @param facts   on energy, charge, bleeding and start-up
 * @param caution stands beside every figure of stored energy
 */
public record StressView(List<Row> rows, List<Fact> facts, String caution) {

    /** Less than anyone could measure. */
    private static final double LEAST_RISE_K = 0.01;
    private static final String STORED = "stored-charge-and-energy";

    /** One branch. */
    public record Row(String label, Cell voltage, Cell rippleCurrent, Cell temperature, Cell life) {
    }

    /**
     * @param outcome of its own verdict, empty where the rail does not ask
     * @param css     the outcome as a style name
     * @param note    what the figure rests on, and the corner
     * @param source  of the rule that allows it or makes it; empty where no rule says anything
     */
    public record Cell(String figure, String outcome, String css, String note, String source) {
    }

    /**
     * @param source   of what the rail asks, or empty
     * @param equation anchor in the method's page
     */
    public record Fact(String name, String value, String source, String equation) {
    }

    /** @return null where only pictures were worked out */
    public static StressView of(Evaluation evaluation) {
        BankStress stress = evaluation.stress();
        if (stress == null) {
            return null;
        }
        List<Row> rows = new ArrayList<>();
        for (int k = 0; k < stress.branches().size(); k++) {
            rows.add(row(evaluation.input().branches().get(k), stress.branches().get(k), evaluation.input().settings()));
        }
        return new StressView(List.copyOf(rows), facts(stress, evaluation.input().rail()), Bleed.CAUTION);
    }

    private static Row row(BranchInput branch, BranchStress stress, TeamSettings settings) {
        Technology technology = branch.technology();
        String derating = technology == null ? "" : settings.deratingRules().of(technology).map(DeratingRule::source).orElse("");
        String rule = technology == null ? "" : settings.stressRules().of(technology).source();
        return new Row(branch.label(), voltage(branch, stress.voltage(), derating), ripple(stress.rippleCurrent(), rule), temperature(stress, rule),
                life(stress, technology));
    }

    private static Cell voltage(BranchInput branch, Verdict verdict, String source) {
        if (verdict.value() == null || branch.ratedVoltageV() == null) {
            return cell("unknown", verdict, verdict.sentence(), "");
        }
        return cell(BankView.percent(verdict.value() / branch.ratedVoltageV()) + " of " + q(branch.ratedVoltageV(), "V"), verdict,
                "with the peak of the ripple" + at(verdict.corner()), source);
    }

    private static Cell ripple(Verdict verdict, String source) {
        if (verdict.value() == null) {
            return cell(verdict.outcome() == Outcome.NOT_ASKED ? "no rating needed" : verdict.outcome().label(), verdict, verdict.sentence(), "");
        }
        return cell(q(verdict.value(), "A") + " of " + q(verdict.limit(), "A"), verdict, "weighed by frequency, of what the rule allows" + at(verdict.corner()),
                source);
    }

    private static Cell temperature(BranchStress stress, String source) {
        PartStress hottest = stress.hottest();
        Verdict verdict = stress.temperature();
        if (hottest == null || hottest.heat().runsAway()) {
            return cell(hottest == null ? "unknown" : "runs away", verdict, verdict.sentence(), hottest == null ? "" : source);
        }
        String allowed = hottest.allowedC() == null ? "" : ", " + q(hottest.allowedC(), "degC") + " allowed";
        return cell(q(hottest.heat().coreC(), "degC") + ", " + rise(hottest.heat().riseK()) + " over the air", verdict,
                (hottest.heat().estimated() ? "thermal resistance estimated" : "thermal resistance rated") + allowed + at(stress.hottestCorner()),
                hottest.allowedC() == null ? "" : source);
    }

    private static String rise(double kelvin) {
        return kelvin < LEAST_RISE_K ? "under " + q(LEAST_RISE_K, "K") : q(kelvin, "K");
    }

    private static Cell life(BranchStress stress, Technology technology) {
        Verdict verdict = stress.life();
        LifeEstimate life = stress.hottest() == null ? null : stress.hottest().life();
        if (life == null || !life.modelled()) {
            boolean notModelled = verdict.outcome() == Outcome.NOT_MODELLED || technology != null && LifeRule.of(technology).isEmpty();
            return cell(notModelled ? "not modelled" : "unknown", verdict, life == null ? verdict.sentence() : life.reason(), "");
        }
        return cell(q(life.hours(), "h"), verdict, "estimated by the " + life.rule().label() + at(stress.hottestCorner()), LifeRule.source(technology));
    }

    private static Cell cell(String figure, Verdict verdict, String note, String source) {
        boolean asked = verdict.outcome() != Outcome.NOT_ASKED && !verdict.outcome().label().equals(figure);
        return new Cell(figure, asked ? verdict.outcome().label() : "", VerdictTurn.css(verdict), note, source);
    }

    private static List<Fact> facts(BankStress stress, RailFigures rail) {
        StoredCharge stored = stress.stored();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Stored energy", q(stored.energyJ(), "J") + " at " + q(stored.chargedV(), "V") + at(stored.corner()), "", STORED));
        facts.add(new Fact("Stored charge", q(stored.chargeC(), "C") + "; " + q(stored.capacitanceF(), "F") + " there, "
                + q(stored.unbiasedF(), "F") + " without bias", "", STORED));
        Bleed bleed = stored.bleed();
        facts.add(new Fact("Bleeding", bleed == null ? "no bleed resistor is stated on the rail"
                : q(bleed.timeS(), "s") + " through " + q(bleed.bleederOhm(), "ohm") + " to " + q(bleed.safe().volts(), "V") + " ("
                        + bleed.safe().source() + "); " + q(bleed.bleederPeakW(), "W") + " in the resistor at first", "", "bleeding"));
        StartUp start = stress.startUp();
        facts.add(new Fact("Start-up", start == null ? "no ramp is stated on the rail, or it is not modelled for this converter"
                : q(start.peakChargingA(), "A") + " charge the bank" + (start.largestCapacitanceF() == null ? ""
                        : "; the converter could start into " + q(start.largestCapacitanceF(), "F")) + at(stress.startVerdict().corner()),
                rail.startUp() == null || rail.startUp().citation() == null ? "" : "ramp from " + rail.startUp().citation(), "start-up"));
        return List.copyOf(facts);
    }

    private static String at(String corner) {
        return corner == null ? "" : "; corner: " + corner;
    }

    private static String q(double value, String unit) {
        return Quantity.format(value, unit, 3);
    }
}
