package org.stillrail.support;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

/**
 * One way to call the application.
 *
 * @param method GET, POST, ... or ANY
 * @param path pattern with its variables in braces
 * @param consumes what the body must be, or null
 */
public record Endpoint(String method, String path, MediaType consumes) {

    /** All that are mapped, without the error page. */
    public static List<Endpoint> all(ApplicationContext context) {
        return context.getBeansOfType(RequestMappingInfoHandlerMapping.class).values().stream()
                .flatMap(mapping -> mapping.getHandlerMethods().keySet().stream())
                .flatMap(Endpoint::of)
                .filter(endpoint -> !endpoint.path().equals("/error"))
                .sorted(Comparator.comparing(Endpoint::path).thenComparing(Endpoint::method))
                .toList();
    }

    private static Stream<Endpoint> of(RequestMappingInfo mapping) {
        Set<String> methods = new TreeSet<>();
        for (RequestMethod method : mapping.getMethodsCondition().getMethods()) {
            methods.add(method.name());
        }
        if (methods.isEmpty()) {
            methods.add("ANY");
        }
        MediaType consumes = mapping.getConsumesCondition().getConsumableMediaTypes().stream().findFirst().orElse(null);
        return mapping.getPatternValues().stream()
                .flatMap(path -> methods.stream().map(method -> new Endpoint(method, path, consumes)));
    }

    /** How the table names it. */
    public String name() {
        return method + " " + path;
    }

    public boolean isApi() {
        return path.startsWith("/api/");
    }

    /** A path that fits the pattern and names nothing that exists. */
    public String harmlessPath() {
        return path
                .replaceAll("\\{[^}]*([nN]umber|revision|page)}", "999999")
                .replaceAll("\\{[^}]*}", "00000000-0000-0000-0000-000000000000")
                .replace("/**", "/nothing");
    }

    /** The pattern with one text in place of every variable. */
    public String pathWith(String text) {
        return path.replaceAll("\\{[^}]*}", text.replace("$", "\\$")).replace("/**", "/" + text);
    }

    public boolean hasVariables() {
        return path.contains("{") || path.contains("**");
    }

    /** Whether a path, without its query, fits the pattern; a variable is one segment. */
    public boolean fits(String asked) {
        String expression = Stream.of(path.split("(?=\\{)|(?<=})"))
                .map(piece -> piece.startsWith("{") ? "[^/]+" : Pattern.quote(piece)).collect(Collectors.joining());
        return asked.matches(expression);
    }
}
