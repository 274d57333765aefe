package org.stillrail.calculation;

import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Writes answers as JSON: shortest decimals that read back as the same number, null where there is no figure, and nothing at
 * all where a figure came out infinite or undefined. JSON has no such numbers, and an answer that holds one is of no use.
 */
@Component
class AnswerWriter {

    private final JsonMapper mapper = JsonMapper.builder(
                    JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build())
            .addModule(new SimpleModule("finite-figures")
                    .addSerializer(Double.class, new Figure(Double.class))
                    .addSerializer(double.class, new Figure(double.class))
                    .addSerializer(double[].class, new Figures()))
            .build();

    /** @throws BadInputException naming the first figure that is not finite */
    byte[] write(CalculationAnswer answer) {
        try {
            return mapper.writeValueAsBytes(answer);
        } catch (NotFiniteException e) {
            throw new BadInputException(FieldProblem.BODY, "leads to a figure beyond all numbers (" + path(e)
                    + "); check the units: F, H, ohm, Hz, V, A, s");
        }
    }

    private static String path(NotFiniteException e) {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : e.getPath()) {
            if (step.getPropertyName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getPropertyName());
            }
        }
        return path.toString();
    }

    private static final class NotFiniteException extends DatabindException {

        private static final long serialVersionUID = 1L;

        NotFiniteException() {
            super("not finite");
        }
    }

    private static void write(JsonGenerator generator, double value) {
        if (!Double.isFinite(value)) {
            throw new NotFiniteException();
        }
        generator.writeNumber(value);
    }

    private static final class Figure extends StdSerializer<Double> {

        Figure(Class<Double> type) {
            super(type);
        }

        @Override
        public void serialize(Double value, JsonGenerator generator, SerializationContext context) {
            write(generator, value);
        }
    }

    private static final class Figures extends StdSerializer<double[]> {

        Figures() {
            super(double[].class);
        }

        @Override
        public void serialize(double[] values, JsonGenerator generator, SerializationContext context) {
            generator.writeStartArray(values, values.length);
            for (int i = 0; i < values.length; i++) {
                try {
                    write(generator, values[i]);
                } catch (NotFiniteException e) {
                    e.prependPath(values, i);
                    throw e;
                }
            }
            generator.writeEndArray();
        }
    }
}
