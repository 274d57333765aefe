package org.stillrail.bank;

import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.stillrail.library.Library;
import org.stillrail.web.Form;
import org.stillrail.web.FormShape;

/**
 * The branches of a bank and the nodes that they stand at are one thing: a card is known only by its place, so that those of two
 * people cannot be put together without mistaking one branch for another.
 *
 * @param railRevisionId null for a scratch bank
 */
record BankShape(UUID railRevisionId, Library library) implements FormShape<BankDocument> {

    private static final Set<String> DISTANCE = Set.of("path", "pathR", "pathL", "sense", "loadC", "loadR", "loadL");

    @Override
    public Form fill(BankDocument document) {
        return BankForm.fill(document, library);
    }

    @Override
    public BankDocument read(Form form) {
        return BankForm.read(form, railRevisionId, library);
    }

    @Override
    public String group(String field) {
        return DISTANCE.contains(field) || field.matches("b\\d+\\..*") ? "branches" : field;
    }

    @Override
    public String words(String field, String value) {
        if (field.equals("path")) {
            return DistanceForm.paths().getOrDefault(value, value);
        }
        if (field.endsWith(".part") && !value.isEmpty()) {
            return value.equals(BankForm.INLINE) ? PartField.TYPED_HERE : library.find(UUID.fromString(value)).orElseThrow().partNumber();
        }
        Map<String, String> words = field.endsWith(".mountingFrom") ? MountingForm.origins() : DistanceForm.nodes();
        return words.getOrDefault(value, value);
    }
}
