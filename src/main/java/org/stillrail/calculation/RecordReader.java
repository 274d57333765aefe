package org.stillrail.calculation;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * Builds a request record from a JSON tree and goes on after a wrong field, so that all of them are reported at once; data
 * binding proper stops at the first. A field that is absent, null or wrong is null in the record.
 *
 * <p>Known types: {@code String}, {@code Double}, {@code Integer}, {@code Boolean}, {@code double[]}, lists, records, and
 * interfaces whose annotations name a record for each value of a discriminating field.
 */
final class RecordReader {

    private final FieldProblems problems;

    private RecordReader(FieldProblems problems) {
        this.problems = problems;
    }

    /** The record, or null where the tree is no object. */
    static <T> T read(JsonNode tree, Class<T> type, FieldProblems problems) {
        return type.cast(new RecordReader(problems).object(tree, type, "", null));
    }

    private Object value(JsonNode node, Type type, String path) {
        if (node == null || node.isNull() || node.isMissingNode()) {
            return null;
        }
        if (type instanceof ParameterizedType list) {
            return list(node, list.getActualTypeArguments()[0], path);
        }
        if (type == Double.class) {
            return number(node, path);
        }
        if (type == Integer.class) {
            return integer(node, path);
        }
        if (type == double[].class) {
            return numbers(node, path);
        }
        if (type == String.class) {
            return node.isString() ? node.stringValue() : wrong(path, "must be text");
        }
        if (type == Boolean.class) {
            return node.isBoolean() ? node.booleanValue() : wrong(path, "must be true or false");
        }
        Class<?> plain = (Class<?>) type;
        return plain.isInterface() ? choice(node, plain, path) : object(node, plain, path, null);
    }

    private Object wrong(String path, String message) {
        problems.add(path, message);
        return null;
    }

    private Double number(JsonNode node, String path) {
        if (!node.isNumber()) {
            wrong(path, "must be a number");
            return null;
        }
        double value = node.numberValue().doubleValue();
        if (!Double.isFinite(value)) {
            wrong(path, "must be a finite number");
            return null;
        }
        return value;
    }

    /** A whole number may be written 2 or 2.0: JSON knows one kind of number. */
    private Integer integer(JsonNode node, String path) {
        Double value = number(node, path);
        if (value == null) {
            return null;
        }
        if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
            wrong(path, "must be a whole number");
            return null;
        }
        return value.intValue();
    }

    private double[] numbers(JsonNode node, String path) {
        if (!node.isArray()) {
            wrong(path, "must be a list of numbers");
            return null;
        }
        double[] values = new double[node.size()];
        boolean complete = true;
        int i = 0;
        for (JsonNode element : node) {
            Double value = element.isNumber() ? Double.valueOf(element.numberValue().doubleValue()) : null;
            if (value != null && Double.isFinite(value)) {
                values[i] = value;
            } else {
                number(element, FieldProblems.path(path, i));
                complete = false;
            }
            i++;
        }
        return complete ? values : null;
    }

    private List<Object> list(JsonNode node, Type elementType, String path) {
        if (!node.isArray()) {
            wrong(path, "must be a list");
            return null;
        }
        List<Object> values = new ArrayList<>(node.size());
        for (JsonNode element : node) {
            values.add(value(element, elementType, FieldProblems.path(path, values.size())));
        }
        return values;
    }

    private Object choice(JsonNode node, Class<?> type, String path) {
        if (!node.isObject()) {
            return wrong(path, "must be an object");
        }
        String discriminator = type.getAnnotation(JsonTypeInfo.class).property();
        JsonSubTypes.Type[] choices = type.getAnnotation(JsonSubTypes.class).value();
        String known = Arrays.stream(choices).map(JsonSubTypes.Type::name).collect(Collectors.joining(", "));
        JsonNode kind = node.get(discriminator);
        String kindPath = FieldProblems.path(path, discriminator);
        if (kind == null || kind.isNull()) {
            return wrong(kindPath, "is required: one of " + known);
        }
        for (JsonSubTypes.Type choice : choices) {
            if (kind.isString() && choice.name().equals(kind.stringValue())) {
                return object(node, choice.value(), path, discriminator);
            }
        }
        return wrong(kindPath, "must be one of " + known);
    }

    private Object object(JsonNode node, Class<?> type, String path, String discriminator) {
        if (!node.isObject()) {
            return wrong(path, "must be an object");
        }
        RecordComponent[] components = type.getRecordComponents();
        Object[] arguments = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            String name = components[i].getName();
            arguments[i] = value(node.get(name), components[i].getGenericType(), FieldProblems.path(path, name));
        }
        refuseUnknown(node, components, path, discriminator);
        Object read = construct(type, components, arguments);
        if (read instanceof CrossChecked checked) {
            checked.check(path, problems);
        }
        return read;
    }

    private void refuseUnknown(JsonNode node, RecordComponent[] components, String path, String discriminator) {
        List<String> known = Stream.concat(Stream.ofNullable(discriminator), Arrays.stream(components).map(RecordComponent::getName))
                .toList();
        for (String name : node.propertyNames()) {
            if (!known.contains(name)) {
                problems.add(FieldProblems.path(path, shortened(name)), "is not known here; the fields are " + String.join(", ", known));
            }
        }
    }

    private static String shortened(String name) {
        return name.length() <= 80 ? name : name.substring(0, 80) + "\u2026";
    }

    private static Object construct(Class<?> type, RecordComponent[] components, Object[] arguments) {
        try {
            Class<?>[] types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(arguments);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " is not a record that can be filled", e);
        }
    }
}
