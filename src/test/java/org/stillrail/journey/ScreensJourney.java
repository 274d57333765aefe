package org.stillrail.journey;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Takes the pictures of the docs: {@code mvn test -Dtest=ScreensJourney -Dstillrail.screens=true} writes one of each page,
 * 1280 px wide, to docs/screens. Run it alone: other journeys leave their data in the demo.
 */
@Browsing
@EnabledIfSystemProperty(named = "stillrail.screens", matches = "true", disabledReason = "Writes pictures into docs/screens")
class ScreensJourney {

    static List<Screen> screens() {
        return Screen.ALL;
    }

    @ParameterizedTest
    @MethodSource("screens")
    void photograph(Screen screen, Visitor visitor) {
        screen.visit(visitor);
        visitor.photograph(Path.of("docs/screens", screen.name() + ".png"), !screen.isLong());
    }
}
