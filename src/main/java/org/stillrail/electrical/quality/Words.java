package org.stillrail.electrical.quality;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.stillrail.electrical.curve.Hertz;

/** Spans of frequency and percentages in sentences. */
final class Words {

    private static final int SHOWN_SPANS = 3;

    private Words() {
    }

    static String percent(double percent) {
        return number(percent) + " %";
    }

    static String spans(List<FrequencySpan> spans) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(SHOWN_SPANS, spans.size()); i++) {
            FrequencySpan span = spans.get(i);
            text.append(i == 0 ? "" : ", ").append(span.fromHz() == span.toHz()
                    ? "at " + Hertz.words(span.fromHz()) : "from " + Hertz.words(span.fromHz()) + " to " + Hertz.words(span.toHz()));
        }
        return text + (spans.size() > SHOWN_SPANS ? (spans.size() - SHOWN_SPANS == 1 ? " and in one more place" : " and in " + (spans.size() - SHOWN_SPANS) + " more places") : "");
    }

    private static String number(double value) {
        return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }
}
