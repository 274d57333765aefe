package org.stillrail.project;

import java.util.List;
import java.util.UUID;

/** Answered by the room of banks: which banks does a rail have? */
public interface RailBanks {

    List<RailBank> of(UUID railId);
}
