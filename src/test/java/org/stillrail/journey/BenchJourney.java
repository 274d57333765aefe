package org.stillrail.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** An engineer brings a measured board to the prediction, and takes its mountings over. */
@Browsing
class BenchJourney {

    @Test
    void attachesAMeasuredBoardAndTakesItsMountingsOver(Visitor engineer) {
        engineer.signInAs("engineer");
        engineer.open("/scratch");
        engineer.fill("Name of the bank", "On the bench");
        engineer.fill("Name", "bulk");
        engineer.press("Save the bank");
        engineer.follow("Prediction against the bench");
        engineer.sees("Nothing is attached to this revision yet");
        engineer.field("Fixture").selectOption("impedance");
        engineer.fill("Instrument and calibration", "Invented analyser");
        engineer.field("File").setInputFiles(new FilePayload("board.csv", "text/csv", board()));
        engineer.press("Attach it");
        engineer.sees("board.csv is attached to revision 1");
        engineer.sees("The prediction misses");
        assertThat(engineer.page().locator("figure.chart canvas").first()).isVisible();
        engineer.press("Write these mountings to revision 2");
        engineer.sees("with the fitted mountings");
        assertThat(engineer.page().locator("[name='b0.mountingL']")).hasValue("3 nH");
    }

    /** One capacitor of 330 uF, 30 mohm and 5 nH, as a new scratch bank has, on a mounting of 9 mohm and 3 nH, by the closed form. */
    static byte[] board() {
        StringBuilder csv = new StringBuilder("Frequency (Hz),R (Ohm),X (Ohm)\n");
        for (int i = 0; i <= 200; i++) {
            double hz = Math.pow(10, 3 + 4.5 * i / 200);
            double omega = 2 * Math.PI * hz;
            csv.append(hz).append(',').append(39e-3).append(',').append(omega * 8e-9 - 1 / (omega * 330e-6)).append('\n');
        }
        return csv.toString().getBytes(StandardCharsets.US_ASCII);
    }
}
