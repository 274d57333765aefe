package org.stillrail.report;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.Locale;
import java.util.UUID;
import org.springframework.jdbc.support.JdbcUtils;

/** Between values of a database and cells of a {@link ProjectFile}. */
final class Cells {

    private Cells() {
    }

    /** What a column holds. */
    enum Type { UUID, TEXT, WHOLE, NUMBER, TRUTH, TIME, DAY, BYTES }

    static Type type(int jdbcType, String typeName) {
        String name = JdbcUtils.resolveTypeName(jdbcType);
        if (typeName.equalsIgnoreCase("uuid")) {
            return Type.UUID;
        }
        return switch (name == null ? "" : name) {
            case "INTEGER", "BIGINT", "SMALLINT" -> Type.WHOLE;
            case "DOUBLE", "FLOAT", "REAL", "NUMERIC", "DECIMAL" -> Type.NUMBER;
            case "BOOLEAN", "BIT" -> Type.TRUTH;
            case "TIMESTAMP_WITH_TIMEZONE", "TIMESTAMP" -> Type.TIME;
            case "DATE" -> Type.DAY;
            case "BINARY", "VARBINARY", "LONGVARBINARY", "BLOB" -> Type.BYTES;
            default -> Type.TEXT;
        };
    }

    /** Of what {@code getObject} gave for {@link #javaType}. */
    static Object cell(Object value) {
        if (value instanceof byte[] bytes) {
            return Base64.getEncoder().encodeToString(bytes);
        }
        if (value instanceof OffsetDateTime time) {
            return time.withOffsetSameInstant(ZoneOffset.UTC).toString();
        }
        if (value instanceof UUID || value instanceof LocalDate) {
            return value.toString();
        }
        return value;
    }

    static Class<?> javaType(Type type) {
        return switch (type) {
            case UUID -> UUID.class;
            case TEXT -> String.class;
            case WHOLE -> Long.class;
            case NUMBER -> Double.class;
            case TRUTH -> Boolean.class;
            case TIME -> OffsetDateTime.class;
            case DAY -> LocalDate.class;
            case BYTES -> byte[].class;
        };
    }

    /** @throws IllegalArgumentException naming the column where the cell is not of its type */
    static Object value(Type type, String column, Object cell) {
        if (cell == null) {
            return null;
        }
        try {
            return switch (type) {
                case UUID -> UUID.fromString((String) cell);
                case TEXT -> text((String) cell);
                case WHOLE -> ((Number) cell).longValue();
                case NUMBER -> ((Number) cell).doubleValue();
                case TRUTH -> (Boolean) cell;
                case TIME -> OffsetDateTime.parse((String) cell);
                case DAY -> LocalDate.parse((String) cell);
                case BYTES -> Base64.getDecoder().decode((String) cell);
            };
        } catch (ClassCastException | DateTimeException | IllegalArgumentException e) {
            throw new IllegalArgumentException("Column " + column + " holds something that is no " + type.name().toLowerCase(Locale.ROOT), e);
        }
    }

    private static String text(String text) {
        if (text.indexOf('\0') >= 0) {
            throw new IllegalArgumentException("A text cannot hold NUL");
        }
        return text;
    }
}
