package org.stillrail.team;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.stillrail.electrical.requirement.TeamSettings;

/**
 * What one revision of the settings says.
 *
 * @param evaluation   what every new evaluation is done with
 * @param vettingItems what a part needs before it can be vetted, in the order of the items
 */
public record SettingsDocument(TeamSettings evaluation, List<VettingItem> vettingItems) {

    public static final SettingsDocument DEFAULT = new SettingsDocument(TeamSettings.DEFAULT,
            List.of(VettingItem.DATASHEET, VettingItem.SWEEP, VettingItem.BIAS_CURVE, VettingItem.RIPPLE_RATING));

    public SettingsDocument {
        Set<VettingItem> distinct = EnumSet.noneOf(VettingItem.class);
        distinct.addAll(vettingItems);
        vettingItems = List.copyOf(distinct);
    }
}
