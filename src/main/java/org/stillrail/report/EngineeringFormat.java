package org.stillrail.report;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import org.stillrail.web.Quantity;

/** Numbers on a chart's axis with engineering prefixes, 100 k or 4.7 m; the unit stands in the axis label. */
final class EngineeringFormat extends NumberFormat {

    private static final long serialVersionUID = 1L;
    private static final int DIGITS = 4;

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        String withUnit = Quantity.format(number, "V", DIGITS);
        return to.append(withUnit, 0, withUnit.length() - 1);
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return format((double) number, to, position);
    }

    @Override
    public Number parse(String source, ParsePosition position) {
        throw new UnsupportedOperationException("An axis only writes");
    }
}
