package org.stillrail.library;

import java.util.List;
import java.util.UUID;

/** Answered by rooms above this one: who uses a part? */
public interface PartUses {

    List<PartUse> of(UUID partId);
}
