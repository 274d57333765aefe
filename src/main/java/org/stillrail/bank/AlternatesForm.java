package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.Vetting;
import org.stillrail.web.Form;

/**
 * The fields of a branch that name what else may be fitted, as part numbers with commas between them, and how many of its places
 * stay empty.
 */
final class AlternatesForm {

    private static final int MOST_PLACES = 999;

    private AlternatesForm() {
    }

    /**
     * @param branch null where its other fields could not be read; these are looked at all the same
     * @return the branch with both, null where {@code branch} is
     */
    static BranchDocument read(BranchDocument branch, Form form, String b, String who, Library library) {
        List<BranchDocument.Alternate> alternates = form.read(b + "alternates", who + "alternates", false, text -> alternates(text, branch, who, library));
        Integer unfitted = form.whole(b + "unfitted", who + "empty places", 0, MOST_PLACES, false);
        return branch == null ? null : branch.withAlternates(alternates, unfitted);
    }

    private static List<BranchDocument.Alternate> alternates(String text, BranchDocument branch, String who, Library library) {
        if (branch != null && branch.partId() == null) {
            throw new IllegalArgumentException(who + "typed figures have no alternates; choose a part of the library");
        }
        List<BranchDocument.Alternate> alternates = new ArrayList<>();
        for (String number : text.split("\\s*[,;]\\s*")) {
            if (number.isEmpty()) {
                continue;
            }
            Part part = library.find(number).orElseThrow(() -> new IllegalArgumentException(who + "the library has no part '" + number + "' to stand in"));
            if (!Vetting.APPROVED.contains(part.vetting())) {
                throw new IllegalArgumentException(
                        who + "alternate " + part.partNumber() + " is " + part.vetting().label() + "; it has to be vetted or restricted");
            }
            if (branch != null && part.id().equals(branch.partId()) || alternates.stream().anyMatch(each -> each.partId().equals(part.id()))) {
                throw new IllegalArgumentException(who + part.partNumber() + " stands here already; an alternate is another part");
            }
            alternates.add(new BranchDocument.Alternate(part.id(), part.revision().id()));
        }
        return alternates;
    }

    static void fill(Form form, String b, BranchDocument branch, Library library) {
        form.with(b + "unfitted", branch.unfitted() == null ? "" : Integer.toString(branch.unfitted()));
        if (branch.alternates() != null) {
            form.with(b + "alternates", branch.alternates().stream()
                    .map(alternate -> library.findRevision(alternate.partRevisionId()).orElseThrow().partNumber())
                    .collect(Collectors.joining(", ")));
        }
    }
}
