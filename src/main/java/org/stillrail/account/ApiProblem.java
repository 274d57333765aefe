package org.stillrail.account;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.stillrail.document.CanonicalJson;

/** Answers a refused API call with an RFC 9457 body. */
final class ApiProblem {

    private ApiProblem() {}

    static void send(HttpServletResponse response, HttpStatus status, String detail) throws IOException {
        byte[] body = CanonicalJson.write(Map.of(
                        "type", "about:blank", "title", status.getReasonPhrase(), "status", status.value(), "detail", detail))
                .getBytes(StandardCharsets.UTF_8);
        response.setStatus(status.value());
        response.setContentType("application/problem+json");
        response.setContentLength(body.length);
        response.getOutputStream().write(body);
    }
}
