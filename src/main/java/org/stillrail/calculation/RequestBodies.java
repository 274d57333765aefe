package org.stillrail.calculation;

import java.io.IOException;
import java.io.InputStream;
import java.util.regex.Pattern;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From the bytes of a body to a checked request record. */
@Component
class RequestBodies {

    private static final int DEEPEST = 32;
    private static final int LONGEST_NUMBER = 1000;
    /** What the parser says of its own settings. */
    private static final Pattern MARKER = Pattern.compile(" \\(start marker at .*?]\\)|\\(from `.*?`\\)");
    /** A body over the limit is still taken in up to here, so that the caller reads the refusal and not a broken pipe. */
    private static final long DRAINED_BYTES = 256L << 20;

    private final Constraints constraints;

    /** NaN and infinities are read here only to be refused under their field's name, and what follows the object in our own words. */
    private final JsonMapper mapper = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxNumberLength(LONGEST_NUMBER).build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                    .build())
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    RequestBodies(Constraints constraints) {
        this.constraints = constraints;
    }

    /**
     * @param contentLength as announced, -1 where it is not
     * @throws BodyTooLargeException over {@link Limits#BODY_BYTES}
     * @throws BadInputException     naming every wrong field
     */
    <T> T read(InputStream body, long contentLength, Class<T> type) throws IOException {
        JsonNode tree = tree(bytes(body, contentLength));
        FieldProblems problems = new FieldProblems();
        T request = RecordReader.read(tree, type, problems);
        if (request != null) {
            constraints.check(request, problems);
        }
        problems.refuseIfAny();
        return request;
    }

    private static byte[] bytes(InputStream body, long contentLength) throws IOException {
        if (contentLength <= Limits.BODY_BYTES) {
            byte[] bytes = body.readNBytes(Limits.BODY_BYTES + 1);
            if (bytes.length <= Limits.BODY_BYTES) {
                return bytes;
            }
        }
        drain(body);
        throw new BodyTooLargeException("The body is over " + Limits.BODY_MIB + " MiB, the most that is taken");
    }

    private static void drain(InputStream body) throws IOException {
        byte[] sink = new byte[1 << 16];
        long left = DRAINED_BYTES;
        int read = 0;
        while (left > 0 && read >= 0) {
            read = body.read(sink);
            left -= read;
        }
    }

    private JsonNode tree(byte[] bytes) {
        try (JsonParser parser = mapper.createParser(bytes)) {
            return tree(parser);
        }
    }

    private JsonNode tree(JsonParser parser) {
        try {
            JsonNode tree = mapper.readTree(parser);
            if (tree == null) {
                throw new BadInputException(FieldProblem.BODY, "is empty; a JSON object is expected");
            }
            if (parser.nextToken() != null) {
                throw new BadInputException(FieldProblem.BODY, "goes on after the end of the JSON object");
            }
            return tree;
        } catch (StreamConstraintsException e) {
            throw refused(parser, "is beyond what is read: at most " + DEEPEST + " levels of nesting and " + LONGEST_NUMBER
                    + " characters in a number", e);
        } catch (JacksonException e) {
            throw refused(parser, "cannot be read as JSON: " + MARKER.matcher(e.getOriginalMessage()).replaceAll(""), e);
        }
    }

    private static BadInputException refused(JsonParser parser, String message, JacksonException e) {
        String path = path(parser.streamReadContext());
        TokenStreamLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
        return new BadInputException(path.isEmpty() ? FieldProblem.BODY : path,
                message + " (line " + at.getLineNr() + ", column " + at.getColumnNr() + ")");
    }

    private static String path(TokenStreamContext context) {
        if (context == null || context.inRoot()) {
            return "";
        }
        String parent = path(context.getParent());
        if (context.inArray()) {
            return FieldProblems.path(parent, Math.max(0, context.getCurrentIndex()));
        }
        return context.currentName() == null ? parent : FieldProblems.path(parent, context.currentName());
    }
}
