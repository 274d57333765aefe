package org.stillrail.support;

import java.net.URI;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Addresses of what somebody finds by following links: for every endpoint that is read by GET at most so many that fit it. What no
 * link leads to is not in it.
 */
public final class SiteMap {

    private static final List<String> STARTS = List.of("/", "/library", "/projects", "/waiting", "/audit", "/settings", "/people", "/scratch",
            "/account", "/find?q=e", "/prior-designs?voltage=3.3&current=5&switching=500k");
    private static final Pattern LINK = Pattern.compile("\\b(?:href|action|hx-get|src)=\"(/[^\"#]*)[\"#]");
    private static final Pattern QUESTION = Pattern.compile("<form[^>]*method=\"get\"[^>]*>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern FIELD = Pattern.compile("\\bname=\"([^\"]+)\"");

    private final Map<Endpoint, Set<String>> addresses = new LinkedHashMap<>();
    private final Map<Endpoint, Set<String>> fields = new LinkedHashMap<>();
    private final Map<String, String> types = new LinkedHashMap<>();

    private SiteMap() {
    }

    /**
     * @param client    signed in
     * @param endpoints of the application
     * @param each      how many addresses of one endpoint are opened
     * @param first     where to begin, before the pages that the header leads to
     */
    public static SiteMap of(PageClient client, List<Endpoint> endpoints, int each, String... first) throws Exception {
        SiteMap map = new SiteMap();
        endpoints.stream().filter(endpoint -> endpoint.method().equals("GET")).forEach(endpoint -> map.addresses.put(endpoint, new LinkedHashSet<>()));
        Deque<String> open = new ArrayDeque<>(List.of(first));
        open.addAll(STARTS);
        Set<String> seen = new HashSet<>(open);
        while (!open.isEmpty()) {
            String address = open.remove();
            Endpoint endpoint = map.endpointOf(address);
            if (endpoint == null || map.addresses.get(endpoint).size() >= each) {
                continue;
            }
            PageClient.Answer answer = client.ask(address);
            if (answer.status() != 200) {
                continue;
            }
            map.addresses.get(endpoint).add(address);
            map.types.put(address, answer.type());
            if (answer.type().startsWith("text/html")) {
                found(QUESTION, answer.text()).forEach(
                        form -> map.fields.computeIfAbsent(endpoint, key -> new LinkedHashSet<>()).addAll(found(FIELD, form)));
                found(LINK, answer.text()).stream().filter(seen::add).forEach(open::add);
            }
        }
        return map;
    }

    private static List<String> found(Pattern pattern, String html) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(html);
        while (matcher.find()) {
            found.add(matcher.group(1).replace("&amp;", "&"));
        }
        return found;
    }

    /** The most particular one: a path without variables before one with them. */
    private Endpoint endpointOf(String address) {
        String path = URI.create(address).getPath();
        return addresses.keySet().stream().filter(endpoint -> endpoint.fits(path))
                .min((a, b) -> Boolean.compare(a.hasVariables(), b.hasVariables())).orElse(null);
    }

    public Set<String> addresses(Endpoint endpoint) {
        return addresses.getOrDefault(endpoint, Set.of());
    }

    /** Endpoints that no link leads to. */
    public List<String> missing() {
        return addresses.entrySet().stream().filter(entry -> entry.getValue().isEmpty()).map(entry -> entry.getKey().path()).toList();
    }

    /** Addresses that were answered with a media type. */
    public List<String> ofType(String type) {
        return types.entrySet().stream().filter(entry -> entry.getValue().startsWith(type)).map(Map.Entry::getKey).toList();
    }

    /** Names of the fields of the forms on an endpoint's pages whose answer goes into an address. */
    public Set<String> fields(Endpoint endpoint) {
        return fields.getOrDefault(endpoint, Set.of());
    }
}
