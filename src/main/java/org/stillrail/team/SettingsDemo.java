package org.stillrail.team;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.stillrail.account.DemoChapter;
import org.stillrail.account.DemoFiles;
import org.stillrail.account.DemoTeam;

/** What the demo's team has set; all else stays as it comes. */
@Component
@Order(50)
class SettingsDemo implements DemoChapter {

    private final Settings settings;

    SettingsDemo(Settings settings) {
        this.settings = settings;
    }

    private record Told(String about, String currency) {
    }

    @Override
    public void write(DemoTeam team) {
        SettingsDocument set = SettingsDocument.DEFAULT.withCurrency(DemoFiles.json("settings.json", Told.class).currency());
        team.as(team.administrator(), () -> settings.change(0, set, team.administrator()));
    }
}
