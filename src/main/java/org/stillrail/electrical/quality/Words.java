package org.stillrail.electrical.quality;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** Frequencies and percentages in sentences. */
final class Words {

    private static final int SHOWN_SPANS = 3;

    private Words() {
    }

    static String hertz(double hz) {
        double scaled = hz >= 1e9 ? hz / 1e9 : hz >= 1e6 ? hz / 1e6 : hz >= 1e3 ? hz / 1e3 : hz;
        return number(scaled) + (hz >= 1e9 ? " GHz" : hz >= 1e6 ? " MHz" : hz >= 1e3 ? " kHz" : " Hz");
    }

    static String percent(double percent) {
        return number(percent) + " %";
    }

    static String spans(List<FrequencySpan> spans) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(SHOWN_SPANS, spans.size()); i++) {
            FrequencySpan span = spans.get(i);
            text.append(i == 0 ? "" : ", ").append(span.fromHz() == span.toHz()
                    ? "at " + hertz(span.fromHz()) : "from " + hertz(span.fromHz()) + " to " + hertz(span.toHz()));
        }
        return text + (spans.size() > SHOWN_SPANS ? (spans.size() - SHOWN_SPANS == 1 ? " and in one more place" : " and in " + (spans.size() - SHOWN_SPANS) + " more places") : "");
    }

    private static String number(double value) {
        return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }
}
