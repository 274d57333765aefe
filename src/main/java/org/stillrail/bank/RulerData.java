package org.stillrail.bank;

import java.util.List;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.evaluation.WindowShares;
import org.stillrail.electrical.evaluation.WindowSide;

/** The voltage ruler as the browser's module reads it. */
record RulerData(
        String summary, String unit, double nominal, double allowedPlus, double allowedMinus, List<Share> sharesPlus, List<Share> sharesMinus) {

    record Share(String label, double value, String key) {
    }

    static RulerData of(WindowShares window, double nominalV) {
        return new RulerData("What takes up the allowed window round the nominal voltage, corner: " + window.corner(), "V", nominalV,
                window.plus().allowedV(), window.minus().allowedV(), shares(window.plus(), "overshoot"), shares(window.minus(), "undershoot"));
    }

    private static List<Share> shares(WindowSide side, String step) {
        return List.of(
                new Share("set-point accuracy", side.setPointV(), "accuracy"),
                new Share("regulation", side.regulationV(), "regulation"),
                new Share("half the ripple", side.halfRippleV(), "ripple"),
                new Share(step, side.stepV(), "step"));
    }

    String json() {
        return CanonicalJson.write(this);
    }
}
