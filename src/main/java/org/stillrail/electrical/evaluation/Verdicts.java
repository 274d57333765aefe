package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/**
 * All verdicts on a bank fitted in one way, each the worst over the corners.
 *
 * @param figures  in the order of the corners
 * @param verdicts worst first
 * @param fits     of the branches' models, as far as they were needed
 */
record Verdicts(Fitting fitting, List<CornerFigures> figures, List<Verdict> verdicts, Fits fits) {

    /** Their worst corners are those whose steps go through the fits. */
    private static final Set<Requirement> OF_STEPS = EnumSet.of(Requirement.DEVIATION, Requirement.WINDOW);
    /** Judged only at corners whose steps went through the fits. */
    private static final Set<Requirement> RESTING_ON_STEPS = EnumSet.of(Requirement.DEVIATION, Requirement.WINDOW, Requirement.REVERSE_VOLTAGE);
    /** So many of the corners that come out worst in the screening go through the fits, for each verdict. */
    private static final int FITTED = 3;

    /**
     * @param shown        the corner whose steps are drawn
     * @param compensation null without a control
     */
    static Verdicts of(Fitting fitting, List<Corner> corners, Corner shown, Tried<Compensation> compensation, Fits fits) {
        EvaluationInput input = fitting.input();
        RailFigures rail = input.rail();
        CornerFigures nominal = CornerFigures.of(
                input, corners.get(0), corners.get(0).bank(), compensation, Probe.everything(null, corners.get(0) == shown), fits);
        List<CornerFigures> figures = new ArrayList<>(List.of(nominal));
        // Corners do not depend on each other, and the order of the list stays: the same figures on any number of cores.
        figures.addAll(corners.subList(1, corners.size()).parallelStream()
                .map(corner -> CornerFigures.of(input, corner, corner.bank(), compensation, Probe.everything(nominal, corner == shown), fits))
                .toList());
        refineWorstRipple(figures, rail);
        Map<Requirement, Judge> judges = judges(input);
        if (compensation != null && compensation.answered() && rail.loadStep() != null) {
            fitWorstSteps(figures, rail, compensation.value(), judges, shown, fits);
        }
        List<CornerFigures> stepped = figures.stream().filter(CornerFigures::stepsFinal).toList();
        List<Verdict> verdicts = new ArrayList<>();
        judges.forEach((requirement, judge) -> verdicts.add(worst(judge, RESTING_ON_STEPS.contains(requirement) ? stepped : figures)));
        verdicts.addAll(SpaceJudge.all(input));
        verdicts.sort(Verdict.WORST_FIRST);
        return new Verdicts(fitting, List.copyOf(figures), List.copyOf(verdicts), fits);
    }

    /**
     * The verdicts with another count in one branch, each only at the corner that sets it now, with the crossover of now
     * where only its place is needed, and with the present response to whichever of step and release sets no verdict.
     *
     * @param count        0 takes the branch away
     * @param wanted       whose verdicts are asked for
     * @param compensation of the changed bank with its named parts, null without a control
     */
    List<Verdict> withCount(int branch, int count, Set<Requirement> wanted, Tried<Compensation> compensation) {
        EvaluationInput changed = fitting.input().withCount(branch, count);
        RailFigures rail = changed.rail();
        Map<Requirement, Judge> judges = judges(changed);
        judges.keySet().retainAll(wanted);
        Map<String, Set<Probe.Item>> items = items(judges.keySet());
        Map<String, CornerFigures> again = new HashMap<>();
        List<Verdict> after = new ArrayList<>();
        judges.forEach((requirement, judge) -> {
            CornerFigures known = setting(requirement);
            Corner corner = count == 0 ? known.corner().without(branch) : known.corner();
            after.add(judge.at(again.computeIfAbsent(corner.name(), name -> CornerFigures.of(changed, corner,
                    changed(known.bank(), branch, count), compensation, Probe.of(items.get(name), known), fits))));
        });
        SpaceJudge.all(changed).stream().filter(verdict -> wanted.contains(verdict.requirement())).forEach(after::add);
        return after;
    }

    /** The corners are gone through with a ripple to a thousandth; the one with the most ripple then gets it to the last digit. */
    private static void refineWorstRipple(List<CornerFigures> figures, RailFigures rail) {
        int worst = -1;
        for (int i = 0; i < figures.size(); i++) {
            Tried<Double> ripple = figures.get(i).ripplePeakToPeakV();
            if (ripple != null && ripple.answered() && (worst < 0 || ripple.value() > figures.get(worst).ripplePeakToPeakV().value())) {
                worst = i;
            }
        }
        if (worst >= 0) {
            figures.set(worst, figures.get(worst).withExactRipple(rail));
        }
    }

    /** The corners were screened through coarse fits. The shown one and those that come out worst go through the fits proper. */
    private static void fitWorstSteps(
            List<CornerFigures> figures, RailFigures rail, Compensation compensation, Map<Requirement, Judge> judges, Corner shown,
            Fits fits) {
        Set<Integer> chosen = new TreeSet<>();
        for (int i = 0; i < figures.size(); i++) {
            if (figures.get(i).corner() == shown || !figures.get(i).screened().answered()) {
                chosen.add(i);
            }
        }
        for (Requirement requirement : OF_STEPS) {
            Judge judge = judges.get(requirement);
            List<Verdict> verdicts = figures.stream().map(judge::at).toList();
            List<Integer> worstFirst = IntStream.range(0, figures.size()).boxed()
                    .sorted(Comparator.comparing(verdicts::get, Verdict.WORST_FIRST)).toList();
            // Corners that differ in nothing that the step sees come out alike to the last digit; the first of them is enough.
            Set<Double> taken = new HashSet<>();
            worstFirst.stream().filter(i -> taken.size() < FITTED && taken.add(verdicts.get(i).value())).forEach(chosen::add);
        }
        chosen.removeIf(i -> figures.get(i).stepsFinal());
        List<CornerFigures> fitted = chosen.parallelStream()
                .map(i -> figures.get(i).withFittedSteps(rail, compensation, fits.proper(), figures.get(i).corner() == shown)).toList();
        Iterator<CornerFigures> next = fitted.iterator();
        chosen.forEach(i -> figures.set(i, next.next()));
    }

    Verdict on(Requirement requirement) {
        return verdicts.stream().filter(verdict -> verdict.requirement() == requirement).findFirst().orElseThrow();
    }

    /** The figures of the corner that sets a verdict. */
    CornerFigures setting(Requirement requirement) {
        String corner = on(requirement).corner();
        return figures.stream().filter(each -> each.corner().name().equals(corner)).findFirst().orElse(figures.get(0));
    }

    private Map<String, Set<Probe.Item>> items(Set<Requirement> requirements) {
        Map<String, Set<Probe.Item>> items = new HashMap<>();
        for (Requirement requirement : requirements) {
            CornerFigures known = setting(requirement);
            Set<Probe.Item> wanted = items.computeIfAbsent(known.corner().name(), key -> EnumSet.noneOf(Probe.Item.class));
            if (!on(requirement).outcome().judged()) {
                continue;
            }
            switch (requirement) {
                case RIPPLE -> wanted.add(Probe.Item.RIPPLE);
                case VOLTAGE_RATING -> wanted.addAll(EnumSet.of(Probe.Item.RIPPLE, Probe.Item.STRESS));
                case RIPPLE_CURRENT, TEMPERATURE, LIFE -> wanted.add(Probe.Item.STRESS);
                case DAMPING, PHASE_MARGIN, GAIN_MARGIN -> wanted.add(Probe.Item.LOOP);
                case DEVIATION -> wanted.addAll(responses(known, fitting.input().rail().loadStep(), null));
                case WINDOW -> {
                    wanted.add(Probe.Item.RIPPLE);
                    wanted.addAll(responses(known, fitting.input().rail().loadStep(), WindowJudge.below(fitting.input().rail(), known)));
                }
                default -> { }
            }
        }
        return items;
    }

    /** @param fall whether the largest fall is looked for, or the largest rise; null for the larger of both */
    private static Set<Probe.Item> responses(CornerFigures known, LoadStep figures, Boolean fall) {
        if (known.steps() == null || !known.steps().answered()) {
            return EnumSet.of(Probe.Item.LOOP);
        }
        StepPair pair = known.steps().value();
        boolean under = fall == null ? pair.undershootV() > pair.overshootV() : fall;
        // Against nominal either begins as far below it as the load line lets it.
        double stepBeginsV = fall == null ? 0 : figures.droopV(figures.fromA());
        double releaseBeginsV = fall == null ? 0 : figures.droopV(figures.toA());
        boolean step = under ? stepBeginsV + pair.step().undershootV() > releaseBeginsV + pair.release().undershootV()
                : pair.step().overshootV() - stepBeginsV > pair.release().overshootV() - releaseBeginsV;
        return EnumSet.of(step ? Probe.Item.STEP : Probe.Item.RELEASE);
    }

    static Bank changed(Bank bank, int index, int count) {
        Branch branch = bank.branches().get(index);
        return count == 0 ? bank.without(index) : bank.with(index, branch.withCount(count));
    }

    private static Map<Requirement, Judge> judges(EvaluationInput input) {
        RailFigures rail = input.rail();
        Map<Requirement, Judge> judges = new EnumMap<>(Requirement.class);
        judges.put(Requirement.RIPPLE, new RippleJudge(rail));
        judges.put(Requirement.QUIET_BAND, new QuietBandJudge(rail));
        judges.put(Requirement.DAMPING, new DampingJudge(input));
        judges.put(Requirement.PHASE_MARGIN, LoopMarginJudge.ofPhase(input));
        judges.put(Requirement.GAIN_MARGIN, LoopMarginJudge.ofGain(input));
        judges.put(Requirement.BULK_CHARGE, new BulkChargeJudge(rail));
        judges.put(Requirement.DEVIATION, new DeviationJudge(rail));
        judges.put(Requirement.WINDOW, new WindowJudge(rail));
        judges.put(Requirement.VOLTAGE_RATING, new VoltageRatingJudge(input));
        judges.put(Requirement.REVERSE_VOLTAGE, new ReverseVoltageJudge(input));
        judges.put(Requirement.RIPPLE_CURRENT, new RippleCurrentJudge(input));
        judges.put(Requirement.TEMPERATURE, new TemperatureJudge(input));
        judges.put(Requirement.LIFE, new LifeJudge(input));
        judges.put(Requirement.START_UP, new StartUpJudge(input));
        judges.put(Requirement.ESR_WINDOW, new EsrWindowJudge(rail));
        return judges;
    }

    /** The first of equals, so the nominal corner where the corner makes no difference. */
    static Verdict worst(Judge judge, List<CornerFigures> figures) {
        Verdict worst = null;
        for (CornerFigures each : figures) {
            Verdict verdict = judge.at(each);
            if (worst == null || Verdict.WORST_FIRST.compare(verdict, worst) < 0) {
                worst = verdict;
            }
        }
        return worst;
    }
}
