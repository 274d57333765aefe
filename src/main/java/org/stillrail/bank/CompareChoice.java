package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What an address names to be compared.
 *
 * @param banks     each in its newest revision
 * @param revisions of banks
 */
record CompareChoice(List<UUID> banks, List<UUID> revisions) {

    static final int FEWEST = 2;
    static final int MOST = 6;

    /** Each once; null for none. */
    static CompareChoice of(List<UUID> banks, List<UUID> revisions) {
        return new CompareChoice(distinct(banks), distinct(revisions));
    }

    private static List<UUID> distinct(List<UUID> ids) {
        return ids == null ? List.of() : ids.stream().distinct().toList();
    }

    public int size() {
        return banks.size() + revisions.size();
    }

    boolean mayCompare() {
        return size() >= FEWEST && size() <= MOST;
    }

    /** Whether one more may be chosen. */
    public boolean hasRoom() {
        return size() < MOST;
    }

    /** Address with one more bank, in its newest revision. */
    public String with(UUID bankId) {
        return address(Stream.concat(banks.stream(), Stream.of(bankId)).toList(), revisions);
    }

    /** @param place counted over the banks and then the revisions */
    public String without(int place) {
        List<UUID> fewerBanks = new ArrayList<>(banks);
        List<UUID> fewerRevisions = new ArrayList<>(revisions);
        if (place < banks.size()) {
            fewerBanks.remove(place);
        } else {
            fewerRevisions.remove(place - banks.size());
        }
        return address(fewerBanks, fewerRevisions);
    }

    private static String address(List<UUID> banks, List<UUID> revisions) {
        return "/compare?" + Stream.concat(banks.stream().map(id -> "bank=" + id), revisions.stream().map(id -> "revision=" + id))
                .collect(Collectors.joining("&"));
    }
}
