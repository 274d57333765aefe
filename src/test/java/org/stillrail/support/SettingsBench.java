package org.stillrail.support;

import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.account.CurrentPerson;
import org.stillrail.team.Settings;
import org.stillrail.team.SettingsDocument;

/** Changes the team's settings, which every evaluation of the shared application uses, and puts them back. */
public final class SettingsBench {

    private final Settings settings;
    private final JdbcClient jdbc;
    private final CurrentPerson administrator;
    private final SettingsDocument before;

    public SettingsBench(ApplicationContext context, CurrentPerson administrator) {
        this.settings = context.getBean(Settings.class);
        this.jdbc = context.getBean(JdbcClient.class);
        this.administrator = administrator;
        this.before = settings.current();
    }

    /** Another limit of the loop's sensitivity. */
    public void changePeak(double largestSensitivityPeak) {
        change(new SettingsDocument(before.evaluation().withLargestSensitivityPeak(largestSensitivityPeak), before.vettingItems(), before.pointsPerDecade()));
    }

    public void putBack() {
        change(before);
    }

    private void change(SettingsDocument document) {
        int newest = jdbc.sql("select coalesce(max(number), 0) from team_settings_revision").query(Integer.class).single();
        TeamBench.as(administrator, () -> {
            settings.change(newest, document, administrator);
            return null;
        });
    }
}
