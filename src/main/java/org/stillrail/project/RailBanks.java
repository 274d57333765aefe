package org.stillrail.project;

import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Answered by the room of banks: which banks do rails have? Asked once for a whole list. */
public interface RailBanks {

    /** By rail, each list by name; rails without a bank are left out. */
    Map<UUID, List<RailBank>> of(List<UUID> railIds);
}
