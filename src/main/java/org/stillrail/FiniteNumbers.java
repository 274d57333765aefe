package org.stillrail;

import java.util.Arrays;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.deser.std.StdScalarDeserializer;

/** Reads a JSON array of finite numbers; the path of the exception names the element that is none. */
final class FiniteNumbers extends StdScalarDeserializer<double[]> {

    FiniteNumbers() {
        super(double[].class);
    }

    @Override
    public double[] deserialize(JsonParser parser, DeserializationContext context) {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            return context.reportInputMismatch(this, "must be a list of numbers");
        }
        double[] values = new double[64];
        int count = 0;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (count == values.length) {
                values = Arrays.copyOf(values, 2 * count);
            }
            try {
                values[count] = FiniteNumber.read(this, parser, context);
            } catch (DatabindException refused) {
                refused.prependPath(values, count);
                throw refused;
            }
            count++;
        }
        return Arrays.copyOf(values, count);
    }
}
