package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.team.Settings;
import org.stillrail.team.VettingItem;

/** The checklist of a part, by the team's list of today and the reasons that were stated. */
@Repository
class VettingChecklists {

    private final JdbcClient jdbc;
    private final Settings settings;

    VettingChecklists(JdbcClient jdbc, Settings settings) {
        this.jdbc = jdbc;
        this.settings = settings;
    }

    VettingChecklist of(Part part, List<Sweep> sweeps) {
        return VettingChecklist.of(part.document(), sweeps, settings.current().vettingItems(), exemptions(part.id()));
    }

    /** What of the list a revision of a part would take away, in words; empty where nothing. */
    String lostBy(PartDocument revision, Part part, List<Sweep> sweeps) {
        VettingChecklist after = VettingChecklist.of(revision, sweeps, settings.current().vettingItems(), exemptions(part.id()));
        return after.lostSince(of(part, sweeps));
    }

    void insert(UUID partId, VettingItem item, String reason, CurrentPerson author, OffsetDateTime at) {
        jdbc.sql("""
                        insert into part_exemption (id, part_id, item, reason, author_id, author, made_at)
                        values (:id, :partId, :item, :reason, :authorId, :author, :at)""")
                .param("id", UUID.randomUUID())
                .param("partId", partId)
                .param("item", item.name())
                .param("reason", reason)
                .param("authorId", author.id())
                .param("author", author.displayName())
                .param("at", at)
                .update();
    }

    /** The newest reason for each item that one was stated for. */
    Map<VettingItem, VettingChecklist.Exemption> exemptions(UUID partId) {
        Map<VettingItem, VettingChecklist.Exemption> newest = new EnumMap<>(VettingItem.class);
        jdbc.sql("select item, reason, author from part_exemption where part_id = :partId order by made_at, id")
                .param("partId", partId)
                .query((row, index) -> new VettingChecklist.Exemption(
                        VettingItem.valueOf(row.getString("item")), row.getString("reason"), row.getString("author")))
                .list()
                .forEach(exemption -> newest.put(exemption.item(), exemption));
        return newest;
    }
}
