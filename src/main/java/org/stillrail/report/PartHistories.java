package org.stillrail.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.document.CanonicalJson;
import org.stillrail.library.PartDocument;
import org.stillrail.library.Vetting;

/** Holds the revisions that a file has of parts against those that are here: one may be longer than the other, and never another one. */
@Component
class PartHistories {

    private final JdbcClient jdbc;

    PartHistories(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A part of this installation. */
    private record Here(String partNumber, int latest, boolean vetted) {
    }

    /**
     * @param all       revisions of the file, as values
     * @param fresh     those of them that are not here
     * @param conflicts gets a sentence for each part whose histories do not fit
     * @return what parts that are here would gain
     */
    List<LaterRevisions> later(List<Map<String, Object>> all, List<Map<String, Object>> fresh, List<String> conflicts) {
        List<LaterRevisions> later = new ArrayList<>();
        bySubject(all).forEach((part, revisions) -> {
            Here here = here(part);
            List<Map<String, Object>> added = revisions.stream().filter(fresh::contains).toList();
            if (!whole(revisions)) {
                conflicts.add("The revisions of part '" + name(here, revisions) + "' are not numbered 1, 2, 3 without a gap: the file was changed.");
            } else if (here != null && !added.isEmpty()) {
                Map<String, Object> first = added.get(0);
                if (number(first) <= here.latest()) {
                    conflicts.add(fork(part, here, first));
                } else {
                    later.add(later(part, here, added.get(added.size() - 1), conflicts));
                }
            }
        });
        return later;
    }

    private static LaterRevisions later(UUID part, Here here, Map<String, Object> newest, List<String> conflicts) {
        String maker = "";
        try {
            maker = CanonicalJson.read((String) newest.get("document"), PartDocument.class).maker();
        } catch (IllegalArgumentException e) {
            conflicts.add("Revision " + number(newest) + " of part '" + here.partNumber() + "' cannot be read: " + e.getMessage());
        }
        return new LaterRevisions(part, here.partNumber(), here.latest(), number(newest), (String) newest.get("author"), maker, here.vetted());
    }

    private String fork(UUID part, Here here, Map<String, Object> there) {
        int number = number(there);
        String author = jdbc.sql("select author from part_revision where subject_id = :part and number = :number")
                .param("part", part).param("number", number).query(String.class).single();
        return "The history of part '" + here.partNumber() + "' forks at revision " + number + ": the one here is by " + author + ", the one in the file by "
                + there.get("author") + ". Both have gone on from the same part, and neither can stand after the other.";
    }

    private Here here(UUID part) {
        return jdbc.sql("select part_number, latest_number, vetting from part where id = :id").param("id", part)
                .query((row, index) -> new Here(row.getString("part_number"), row.getInt("latest_number"),
                        Vetting.valueOf(row.getString("vetting")) == Vetting.VETTED)).optional().orElse(null);
    }

    private static String name(Here here, List<Map<String, Object>> revisions) {
        return here == null ? String.valueOf(revisions.get(0).get("subject_id")) : here.partNumber();
    }

    private static Map<UUID, List<Map<String, Object>>> bySubject(List<Map<String, Object>> rows) {
        Map<UUID, List<Map<String, Object>>> subjects = new LinkedHashMap<>();
        rows.forEach(row -> subjects.computeIfAbsent((UUID) row.get("subject_id"), id -> new ArrayList<>()).add(row));
        subjects.values().forEach(revisions -> revisions.sort(Comparator.comparingInt(PartHistories::number)));
        return subjects;
    }

    private static boolean whole(List<Map<String, Object>> revisions) {
        for (int i = 0; i < revisions.size(); i++) {
            if (number(revisions.get(i)) != i + 1) {
                return false;
            }
        }
        return true;
    }

    private static int number(Map<String, Object> revision) {
        return ((Long) revision.get("number")).intValue();
    }
}
