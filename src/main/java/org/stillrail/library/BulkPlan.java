package org.stillrail.library;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.document.Sha256;

/**
 * What a table of parts would do to the library: a step for each line. It is carried out as a whole, or where a line is
 * refused, not at all.
 */
record BulkPlan(List<Step> steps) {

    /** What happens to one part. */
    enum Action { NEW, REVISION, UNCHANGED, REFUSED }

    /**
     * @param part     as it stands in the library, null for a new one
     * @param document null where it is refused
     * @param changes  of a revision
     * @param refusal  every reason, or empty
     */
    record Step(int line, String partNumber, Action action, Part part, PartDocument document, List<PartDifference> changes, String refusal) {

        public String word() {
            return action.name().toLowerCase(Locale.ROOT);
        }
    }

    static BulkPlan of(List<PartsCsv.Line> lines, Library library, CurrentPerson author) {
        Set<String> seen = new HashSet<>();
        List<Step> steps = new ArrayList<>();
        for (PartsCsv.Line line : lines) {
            PartDocument document = PartForm.read(line.form());
            String number = line.form().get("partNumber") == null ? "" : line.form().get("partNumber").strip();
            if (document == null) {
                steps.add(refused(line, number, String.join("; ", line.form().errors().all().values())));
            } else if (!seen.add(number)) {
                steps.add(refused(line, number, "this part number stands in the table twice"));
            } else {
                steps.add(step(line, document, library, author));
            }
        }
        return new BulkPlan(List.copyOf(steps));
    }

    private static Step step(PartsCsv.Line line, PartDocument read, Library library, CurrentPerson author) {
        Optional<Part> found = library.find(read.partNumber());
        if (found.isEmpty()) {
            return new Step(line.number(), read.partNumber(), Action.NEW, null, read, List.of(), "");
        }
        Part part = found.get();
        PartDocument document = read.withModel(part.document().model());
        List<PartDifference> changes = PartDifference.between(part.document(), document);
        if (changes.isEmpty()) {
            return new Step(line.number(), read.partNumber(), Action.UNCHANGED, part, document, changes, "");
        }
        if (part.vetting() != Vetting.PROPOSED && !author.has(Role.LIBRARIAN)) {
            return refused(line, read.partNumber(), "it is " + part.vetting().label() + "; a librarian revises such a part");
        }
        String lost = library.lostBy(document, part);
        if (!lost.isEmpty()) {
            return refused(line, read.partNumber(), Library.lacking(part, lost));
        }
        return new Step(line.number(), read.partNumber(), Action.REVISION, part, document, changes, "");
    }

    private static Step refused(PartsCsv.Line line, String number, String why) {
        return new Step(line.number(), number, Action.REFUSED, null, null, List.of(), why);
    }

    public long count(String action) {
        return steps.stream().filter(step -> step.action() == Action.valueOf(action)).count();
    }

    public boolean possible() {
        return count("REFUSED") == 0;
    }

    /** Changes with what is in the table and with what the library holds: what was previewed is what is stored. */
    public String fingerprint() {
        StringBuilder text = new StringBuilder();
        steps.forEach(step -> text.append(step.partNumber()).append('\n').append(step.action()).append('\n').append(step.document()).append('\n')
                .append(step.part() == null ? "" : step.part().version()).append('\n'));
        return Sha256.of(text.toString());
    }
}
