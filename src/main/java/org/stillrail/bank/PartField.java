package org.stillrail.bank;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.Vetting;
import org.stillrail.web.Form;

/**
 * The part of a branch in two fields: the id of what was taken from the list, and the number as it stands in the page. Where the
 * number was typed over and nothing taken, or no script runs, the number decides.
 */
final class PartField {

    static final String TYPED_HERE = "figures typed here";
    static final Set<Vetting> USABLE = EnumSet.complementOf(EnumSet.of(Vetting.WITHDRAWN));

    private PartField() {
    }

    /** Makes the id of each branch follow its number; a number that no part has is an error of the field. */
    static void settle(Form form, Library library) {
        int place = 0;
        for (int i : BankForm.indices(form)) {
            settle(form, "b" + i + ".", "Branch " + ++place + ": ", library);
        }
    }

    private static void settle(Form form, String b, String who, Library library) {
        if (form.get(b + "partNumber") != null && form.isBlank(b + "partNumber")) {
            form.errors().add(b + "part", who + "part is missing");
        }
        String typed = form.text(b + "partNumber", who + "part", false);
        if (typed == null || typed.equals(standing(form.get(b + "part"), library))) {
            return;
        }
        if (typed.equalsIgnoreCase(TYPED_HERE)) {
            choose(form, b, BankForm.INLINE, TYPED_HERE);
            return;
        }
        Optional<Part> part = library.find(typed);
        if (part.isEmpty()) {
            form.errors().add(b + "part", who + "the library has no part '" + typed + "'; take one from the list or type its whole number");
        } else if (!USABLE.contains(part.get().vetting())) {
            form.errors().add(b + "part", who + typed + " is " + part.get().vetting().label() + "; choose another part");
        } else {
            choose(form, b, part.get().id().toString(), typed);
        }
    }

    private static void choose(Form form, String b, String part, String number) {
        form.with(b + "part", part).with(b + "partNumber", number);
    }

    private static String standing(String part, Library library) {
        if (BankForm.INLINE.equals(part)) {
            return TYPED_HERE;
        }
        try {
            return library.find(UUID.fromString(part)).map(Part::partNumber).orElse(null);
        } catch (IllegalArgumentException e) {
            return null;
        }
    }
}
