package org.stillrail.bank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.project.RailBank;
import org.stillrail.project.RailBanks;

/** Tells the room of projects which banks rails have: two queries for a whole list, no document is read. */
@Repository
class BanksOfRails implements RailBanks {

    private final JdbcClient jdbc;

    BanksOfRails(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record Line(UUID railId, RailBank bank) {
    }

    @Override
    public Map<UUID, List<RailBank>> of(List<UUID> railIds) {
        Map<UUID, List<RailBank>> banks = new LinkedHashMap<>();
        if (!railIds.isEmpty()) {
            Map<UUID, Integer> approvedChanged = approvedChanged(railIds);
            jdbc.sql("select b.rail_id, b.id, b.name, s.state, b.latest_number, r.author,"
                            + " case when r.rail_revision_id <> v.id then 1 else 0 end as stale, case when exists (select 1 from bank_part u"
                            + " join part p on p.id = u.part_id join part_revision n on n.subject_id = p.id and n.number = p.latest_number"
                            + " where u.revision_id = r.id and " + BankEvidence.CHANGED + ") then 1 else 0 end as changed from bank b"
                            + " join bank_revision r on r.subject_id = b.id and r.number = b.latest_number"
                            + " join bank_revision_state s on s.revision_id = r.id join rail l on l.id = b.rail_id"
                            + " join rail_revision v on v.subject_id = l.id and v.number = l.latest_number"
                            + " where b.rail_id in (:railIds) order by b.name, b.id")
                    .param("railIds", railIds)
                    .query((row, index) -> new Line(row.getObject("rail_id", UUID.class), new RailBank(row.getObject("id", UUID.class),
                            row.getString("name"), BankState.valueOf(row.getString("state")).label(), row.getInt("latest_number"),
                            row.getString("author"), row.getInt("stale") == 1, row.getInt("changed") == 1,
                            approvedChanged.get(row.getObject("id", UUID.class)))))
                    .list()
                    .forEach(line -> banks.computeIfAbsent(line.railId(), id -> new ArrayList<>()).add(line.bank()));
        }
        return banks;
    }

    /** By bank, the approved revision below the newest that rests on what a part said before. */
    private Map<UUID, Integer> approvedChanged(List<UUID> railIds) {
        Map<UUID, Integer> numbers = new HashMap<>();
        jdbc.sql("select distinct b.id, r.number from bank b join bank_revision r on r.subject_id = b.id and r.number < b.latest_number"
                        + " join bank_revision_state s on s.revision_id = r.id" + BankEvidence.PARTS
                        + "where b.rail_id in (:railIds) and s.state = 'APPROVED' and " + BankEvidence.CHANGED)
                .param("railIds", railIds)
                .query(row -> {
                    numbers.merge(row.getObject("id", UUID.class), row.getInt("number"), Math::max);
                });
        return numbers;
    }
}
