package org.stillrail.support;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads pages and sends forms of a running application over HTTP, signed in by a session cookie. */
public final class PageClient {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
    private static final String BOUNDARY = "----part-of-a-form";

    private final HttpClient http = HttpClient.newBuilder()
            .cookieHandler(new CookieManager()).followRedirects(HttpClient.Redirect.NORMAL).version(HttpClient.Version.HTTP_1_1).build();
    private final String root;
    private String token;

    public PageClient(int port) {
        this.root = "http://127.0.0.1:" + port;
    }

    public PageClient signIn(String userName, String password) throws Exception {
        get("/sign-in");
        post("/sign-in", Map.of("userName", userName, "password", password));
        get("/library");
        return this;
    }

    /** What a path is answered with, whatever the status. */
    public record Answer(int status, String type, String text) {
    }

    /** Asks without the expectation of a page. */
    public Answer ask(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = http.send(HttpRequest.newBuilder(URI.create(root + path)).build(), HttpResponse.BodyHandlers.ofByteArray());
        return new Answer(answer.statusCode(), answer.headers().firstValue("Content-Type").orElse(""),
                new String(answer.body(), StandardCharsets.UTF_8));
    }

    /** The page at this path; its form token is kept for the next post. */
    public String get(String path) throws IOException, InterruptedException {
        return new String(bytes(path), StandardCharsets.UTF_8);
    }

    public byte[] bytes(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = http.send(HttpRequest.newBuilder(URI.create(root + path)).build(), HttpResponse.BodyHandlers.ofByteArray());
        requireSuccess(path, answer.statusCode());
        Matcher found = TOKEN.matcher(new String(answer.body(), StandardCharsets.UTF_8));
        if (found.find()) {
            token = found.group(1);
        }
        return answer.body();
    }

    /** Sends a form; the answer is the page that it led to. */
    public HttpResponse<String> post(String path, Map<String, String> fields) throws IOException, InterruptedException {
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return send(path, "application/x-www-form-urlencoded", HttpRequest.BodyPublishers.ofString(body));
    }

    /** Sends a form with a file in the field {@code file}. */
    public HttpResponse<String> post(String path, Map<String, String> fields, String fileName, byte[] file) throws IOException, InterruptedException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, String> field : fields.entrySet()) {
            body.writeBytes(("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + field.getKey() + "\"\r\n\r\n"
                    + field.getValue() + "\r\n").getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes(("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + fileName
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n").getBytes(StandardCharsets.UTF_8));
        body.writeBytes(file);
        body.writeBytes(("\r\n--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(path, "multipart/form-data; boundary=" + BOUNDARY, HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()));
    }

    private HttpResponse<String> send(String path, String type, HttpRequest.BodyPublisher body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(root + path))
                .header("Content-Type", type).header("X-CSRF-TOKEN", token).POST(body).build();
        HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
        requireSuccess(path, answer.statusCode());
        return answer;
    }

    private static void requireSuccess(String path, int status) {
        if (status != 200) {
            throw new IllegalStateException(path + " answered " + status);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
