package org.stillrail.team;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.stillrail.electrical.requirement.TeamSettings;

/**
 * What one revision of the settings says.
 *
 * @param evaluation   what every new evaluation is done with
 * @param vettingItems    what a part needs before it can be vetted, in the order of the items
 * @param pointsPerDecade of a sweep, fewer are a finding; settings from before there was such a choice have {@link #USUAL_POINTS_PER_DECADE}
 */
public record SettingsDocument(TeamSettings evaluation, List<VettingItem> vettingItems, Integer pointsPerDecade) {

    /** Common practice, no source. */
    public static final int USUAL_POINTS_PER_DECADE = 20;

    public static final SettingsDocument DEFAULT = new SettingsDocument(TeamSettings.DEFAULT,
            List.of(VettingItem.DATASHEET, VettingItem.SWEEP, VettingItem.BIAS_CURVE, VettingItem.RIPPLE_RATING), USUAL_POINTS_PER_DECADE);

    public SettingsDocument {
        Set<VettingItem> distinct = EnumSet.noneOf(VettingItem.class);
        distinct.addAll(vettingItems);
        vettingItems = List.copyOf(distinct);
        pointsPerDecade = pointsPerDecade == null ? (Integer) USUAL_POINTS_PER_DECADE : pointsPerDecade;
    }

    SettingsDocument withCurrency(String code) {
        return new SettingsDocument(evaluation.withCurrency(code), vettingItems, pointsPerDecade);
    }
}
