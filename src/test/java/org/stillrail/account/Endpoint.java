package org.stillrail.account;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;

/**
 * One way to call the application.
 *
 * @param method GET, POST, ... or ANY
 * @param path pattern with its variables in braces
 * @param consumes what the body must be, or null
 */
record Endpoint(String method, String path, MediaType consumes) {

    static Stream<Endpoint> of(RequestMappingInfo mapping) {
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
    String name() {
        return method + " " + path;
    }

    boolean isApi() {
        return path.startsWith("/api/");
    }

    /** A path that fits the pattern and names nothing that exists. */
    String harmlessPath() {
        return path
                .replaceAll("\\{[^}]*([nN]umber|revision|page)}", "999999")
                .replaceAll("\\{[^}]*}", "00000000-0000-0000-0000-000000000000")
                .replace("/**", "/nothing");
    }
}
