package org.stillrail.library;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.team.VettingItem;
import org.stillrail.web.Quantity;

/** What the team asks of one part before it is vetted, and how the part stands to each. */
record VettingChecklist(List<Line> lines) {

    private static final Set<Technology> ELECTROLYTIC = EnumSet.of(Technology.WET_ALUMINIUM, Technology.POLYMER_ALUMINIUM, Technology.HYBRID,
            Technology.TANTALUM_MNO2, Technology.TANTALUM_POLYMER);

    /** Technologies that hold a rail's charge and are chosen by their ripple rating. */
    private static final Set<Technology> BULK = EnumSet.copyOf(ELECTROLYTIC);

    static {
        BULK.add(Technology.DOUBLE_LAYER);
    }

    /**
     * One item.
     *
     * @param detail what is there, or the stated reason; empty where the item is open
     */
    record Line(VettingItem item, boolean done, String detail) {
    }

    /** A librarian's reason why a part does without an item. */
    record Exemption(VettingItem item, String reason, String author) {
    }

    VettingChecklist {
        lines = List.copyOf(lines);
    }

    /**
     * Items that do not concern the part's technology are left out.
     *
     * @param asked      the team's list
     * @param exemptions by item, the newest of each
     */
    static VettingChecklist of(PartDocument part, List<Sweep> sweeps, List<VettingItem> asked, Map<VettingItem, Exemption> exemptions) {
        return new VettingChecklist(asked.stream().filter(item -> concerns(item, part.technology())).map(item -> {
            String found = found(item, part, sweeps);
            Exemption exemption = item.reasonSuffices() ? exemptions.get(item) : null;
            if (found != null || exemption == null) {
                return new Line(item, found != null, found == null ? "" : found);
            }
            return new Line(item, true, "not needed, says " + exemption.author() + ": " + exemption.reason());
        }).toList());
    }

    public boolean done() {
        return open().isEmpty();
    }

    public List<Line> open() {
        return lines.stream().filter(line -> !line.done()).toList();
    }

    /**
     * @param vetting the state that it is asked for
     * @throws VettingRefusedException naming every open item
     */
    void requireDone(Vetting vetting) {
        if (!done()) {
            throw new VettingRefusedException("The part cannot be " + vetting.label() + " yet. It lacks " + names(open()) + ".");
        }
    }

    /** Items that are open here and were not open, or not asked, before; in words, empty where there are none. */
    String lostSince(VettingChecklist before) {
        Set<VettingItem> openBefore = before.open().stream().map(Line::item).collect(Collectors.toSet());
        return names(open().stream().filter(line -> !openBefore.contains(line.item())).toList());
    }

    private static String names(List<Line> lines) {
        return lines.stream().map(line -> line.item().label()).collect(Collectors.joining("; "));
    }

    private static boolean concerns(VettingItem item, Technology technology) {
        return switch (item) {
            case BIAS_CURVE -> technology == Technology.CERAMIC_CLASS_2;
            case RIPPLE_RATING -> BULK.contains(technology);
            case ENDURANCE -> ELECTROLYTIC.contains(technology);
            default -> true;
        };
    }

    /** What the part has, or null. */
    private static String found(VettingItem item, PartDocument part, List<Sweep> sweeps) {
        return switch (item) {
            case DATASHEET -> part.datasheet() == null ? null : part.datasheet().toString();
            case SWEEP -> sweeps.isEmpty() ? null : sweeps.size() == 1 ? "one sweep" : sweeps.size() + " sweeps";
            case TWO_SAMPLES -> {
                long samples = sweeps.stream().map(sweep -> sweep.provenance().sample()).filter(sample -> sample != null).distinct().count();
                yield samples < 2 ? null : samples + " samples";
            }
            case BIAS_CURVE -> bias(part, sweeps);
            case RIPPLE_RATING -> part.rippleRating() == null ? null : Quantity.format(part.rippleRating().currentA(), "A") + " rms";
            case ENDURANCE -> part.endurance() == null ? null : Quantity.format(part.endurance().hours(), "h");
            case TEMPERATURES -> part.temperatureMinC() == null || part.temperatureMaxC() == null ? null
                    : Quantity.format(part.temperatureMinC(), "degC") + " to " + Quantity.format(part.temperatureMaxC(), "degC");
            case SIZE -> part.lengthM() == null || part.widthM() == null || part.heightM() == null ? null
                    : Quantity.format(part.lengthM(), "m") + " x " + Quantity.format(part.widthM(), "m") + " x " + Quantity.format(part.heightM(), "m");
            case COST -> part.cost() == null ? null : part.cost().toPlainString();
        };
    }

    /** Drawn in the datasheet, or measured on one sample at two biases or more. */
    private static String bias(PartDocument part, List<Sweep> sweeps) {
        if (part.characteristics().capacitanceOverBias() != null) {
            return "from the datasheet, " + part.characteristics().capacitanceOverBias().points().size() + " points";
        }
        long most = sweeps.stream().filter(sweep -> sweep.provenance().sample() != null)
                .collect(Collectors.groupingBy(sweep -> sweep.provenance().sample(),
                        Collectors.mapping(sweep -> Math.abs(sweep.provenance().biasV()), Collectors.toSet())))
                .values().stream().mapToLong(Set::size).max().orElse(0);
        return most < 2 ? null : "measured at " + most + " biases";
    }
}
