package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.stillrail.electrical.capacitor.BendNote;
import org.stillrail.electrical.capacitor.Technology;

/**
 * What nobody knows of a branch's part, so that the corners take it as flat, though parts of its technology do change so. Which do is common practice,
 * no source: class 2 ceramics and double layers with bias, all but class 1 with temperature, all but ceramics and film in their ESR, class 2 with age, and what
 * holds an electrolyte to the end of its life.
 */
final class TakenAsFlat {

    private final int index;
    private final boolean named;
    private final String name;
    private final BranchInput branch;
    private final Set<BendNote.Kind> flat = EnumSet.noneOf(BendNote.Kind.class);
    private final Set<String> subjects = new LinkedHashSet<>();
    private final Set<String> held = new TreeSet<>();

    /**
     * Each branch and each of its alternates, in the bank's order, the named part first.
     *
     * @param corners of all fittings
     */
    static List<TakenAsFlat> all(EvaluationInput input, List<Corner> corners) {
        List<TakenAsFlat> all = new ArrayList<>();
        for (int k = 0; k < input.branches().size(); k++) {
            BranchInput branch = input.branches().get(k);
            for (int choice = 0; choice < branch.choices(); choice++) {
                BranchInput standing = branch.choice(choice);
                String name = "'" + branch.label() + "'" + (choice == 0 ? "" : " with " + standing.partNumber());
                all.add(new TakenAsFlat(k, choice == 0, name, standing, corners));
            }
        }
        return all;
    }

    private TakenAsFlat(int index, boolean named, String name, BranchInput branch, List<Corner> corners) {
        this.index = index;
        this.named = named;
        this.name = name;
        this.branch = branch;
        Technology technology = branch.technology();
        if (technology == null) {
            return;
        }
        if (branch.part().leastDeviation() == null) {
            subjects.add("no tolerance");
        }
        if (branch.part().mostResistance() == null) {
            subjects.add("no largest ESR");
        }
        List<Corner> with = corners.stream().filter(corner -> Objects.equals(corner.branches().get(index).partNumber(), branch.partNumber())).toList();
        for (Corner corner : with) {
            for (BendNote note : corner.parts().get(index).notes()) {
                if (note.kind() == BendNote.Kind.HELD) {
                    held.add(note.sentence());
                } else if (changes(technology, note.kind()) && note.subject() != null) {
                    flat.add(note.kind());
                    subjects.add(note.subject());
                }
            }
        }
    }

    /** Of the branch in the bank. */
    int index() {
        return index;
    }

    /** Whether it is the part that the branch names, and not an alternate. */
    boolean named() {
        return named;
    }

    /** For a sentence: the branch, and an alternate's number. */
    String name() {
        return name;
    }

    /** With the part that it stands with here. */
    BranchInput branch() {
        return branch;
    }

    /** What is wrong with resting a verdict on this part, first of all; null where nothing is. */
    String weakness() {
        if (branch.technology() == Technology.CERAMIC_CLASS_2 && flat.contains(BendNote.Kind.BIAS_FLAT)) {
            return name + " has no curve of capacitance over bias: all of its capacitance counts, though class 2 ceramics lose much of it under bias.";
        }
        if (branch.technology() == Technology.WET_ALUMINIUM && flat.contains(BendNote.Kind.ESR_FLAT)) {
            return name + " has no curve of ESR over temperature: its ESR is taken as flat, though wet aluminium has many times its ESR in the cold.";
        }
        return null;
    }

    /** All of it in sentences, those of the curves that end too early too. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (!subjects.isEmpty()) {
            sentences.add("Of " + name + " " + String.join(", ", subjects) + " is known; each is taken as flat.");
        }
        held.forEach(sentence -> sentences.add("Of " + name + ": " + sentence));
        return sentences;
    }

    private static boolean changes(Technology technology, BendNote.Kind kind) {
        boolean ceramic = technology == Technology.CERAMIC_CLASS_1 || technology == Technology.CERAMIC_CLASS_2;
        return switch (kind) {
            case BIAS_FLAT -> technology == Technology.CERAMIC_CLASS_2 || technology == Technology.DOUBLE_LAYER;
            case TEMPERATURE_FLAT -> technology != Technology.CERAMIC_CLASS_1;
            case ESR_FLAT -> !ceramic && technology != Technology.FILM;
            case UNAGED -> technology == Technology.CERAMIC_CLASS_2;
            case UNDRIFTED -> technology.polar();
            case CODE_ALONE, HELD -> true;
        };
    }
}
