package org.stillrail;

import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.deser.std.StdScalarDeserializer;

/** Reads a JSON number into a double; text, NaN and what overflows to infinity are refused with the name of the field. */
final class FiniteNumber extends StdScalarDeserializer<Double> {

    private final boolean required;

    private FiniteNumber(Class<?> type, boolean required) {
        super(type);
        this.required = required;
    }

    /** For {@code double} fields, which must be there. */
    static FiniteNumber primitive() {
        return new FiniteNumber(double.class, true);
    }

    /** For {@code Double} fields, which may be absent or null. */
    static FiniteNumber boxed() {
        return new FiniteNumber(Double.class, false);
    }

    @Override
    public Double deserialize(JsonParser parser, DeserializationContext context) {
        return read(this, parser, context);
    }

    static double read(StdScalarDeserializer<?> owner, JsonParser parser, DeserializationContext context) {
        JsonToken token = parser.currentToken();
        if (token != JsonToken.VALUE_NUMBER_INT && token != JsonToken.VALUE_NUMBER_FLOAT) {
            return context.reportInputMismatch(owner, "must be a number");
        }
        double value = parser.getDoubleValue();
        if (!Double.isFinite(value)) {
            return context.reportInputMismatch(owner, "must be a finite number");
        }
        return value;
    }

    @Override
    public Object getNullValue(DeserializationContext context) {
        return required ? context.reportInputMismatch(this, "must be a number") : null;
    }

    @Override
    public Object getAbsentValue(DeserializationContext context) {
        return required ? context.reportInputMismatch(this, "is missing") : null;
    }
}
