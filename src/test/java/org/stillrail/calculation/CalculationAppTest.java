package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.library.Library;
import org.stillrail.library.LossFigure;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.PartDocument;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The API of the running application over real HTTP: tokens, roles, limits, statuses, and the published description. */
@AppTest
class CalculationAppTest {

    private static final String CALCULATIONS = "/api/v1/calculations/";
    private static final String GOOD = Json.impedance(Json.bank(Json.rlc(1e-6, 0.01, 1e-9)), Json.grid(1e3, 1e6, 10));
    private static final JsonMapper MAPPER = new JsonMapper();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private Library library;

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + port + path));
    }

    private HttpRequest.Builder as(Role role, String path) {
        return request(path).header("Authorization", "Bearer " + people.token(role)).header("Content-Type", "application/json");
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpRequest.BodyPublisher body(String text) {
        return HttpRequest.BodyPublishers.ofString(text);
    }

    private static JsonNode problem(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type")).hasValueSatisfying(
                type -> assertThat(type).startsWith("application/problem+json"));
        JsonNode problem = MAPPER.readTree(response.body());
        assertThat(problem.get("status").intValue()).isEqualTo(status);
        assertThat(problem.get("title").stringValue()).isNotBlank();
        assertThat(problem.get("detail").stringValue()).isNotBlank();
        return problem;
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = {"ENGINEER", "LIBRARIAN", "REVIEWER"})
    void rolesThatWorkWithBanksMayCalculate(Role role) throws Exception {
        HttpResponse<String> response = send(as(role, CALCULATIONS + "impedance").POST(body(GOOD)));
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/json");
        assertThat(MAPPER.readTree(response.body()).get("frequencyHz")).hasSize(10);
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = {"VIEWER", "ADMINISTRATOR"})
    void othersAreRefusedBeforeTheirBodyIsRead(Role role) throws Exception {
        for (String path : List.of("impedance", "ripple", "loop", "step", "fit", "sweep")) {
            problem(send(as(role, CALCULATIONS + path).POST(body("{}"))), 403);
        }
    }

    @Test
    void noTokenOrAWrongOneIs401() throws Exception {
        HttpResponse<String> none = send(request(CALCULATIONS + "impedance")
                .header("Content-Type", "application/json").POST(body(GOOD)));
        problem(none, 401);
        assertThat(none.headers().firstValue("WWW-Authenticate")).isPresent();
        problem(send(request(CALCULATIONS + "impedance").header("Authorization", "Bearer made-up")
                .header("Content-Type", "application/json").POST(body(GOOD))), 401);
    }

    @Test
    void otherMethodsAddressesAndTypesHaveTheirStatus() throws Exception {
        HttpResponse<String> get = send(as(Role.ENGINEER, CALCULATIONS + "impedance").header("Accept", "application/json").GET());
        problem(get, 405);
        assertThat(get.headers().firstValue("Allow")).hasValue("POST");
        problem(send(as(Role.ENGINEER, CALCULATIONS + "nothing").POST(body("{}"))), 404);
        problem(send(as(Role.ENGINEER, "/api/v2/nothing").GET()), 404);
        problem(send(request(CALCULATIONS + "impedance").header("Authorization", "Bearer " + people.token(Role.ENGINEER))
                .header("Content-Type", "text/plain").POST(body(GOOD))), 415);
        problem(send(as(Role.ENGINEER, CALCULATIONS + "sweep").POST(body("{}"))), 415);
        problem(send(as(Role.ENGINEER, CALCULATIONS + "impedance").header("Accept", "text/html").POST(body(GOOD))), 406);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{} {}", "{\"bank\": {\"bank\": 1}}"})
    void badInputIs400(String text) throws Exception {
        JsonNode problem = problem(send(as(Role.ENGINEER, CALCULATIONS + "impedance")
                .header("Accept", "application/json").POST(body(text))), 400);
        assertThat(problem.get("errors")).isNotEmpty();
        assertThat(problem.get("instance").stringValue()).isEqualTo(CALCULATIONS + "impedance");
    }

    @Test
    void bodyAtTheLimitIsReadAndOneByteMoreIsNot() throws Exception {
        byte[] padded = new byte[Limits.BODY_BYTES];
        Arrays.fill(padded, (byte) ' ');
        System.arraycopy(GOOD.getBytes(), 0, padded, 0, GOOD.length());
        HttpResponse<String> atLimit = send(as(Role.ENGINEER, CALCULATIONS + "impedance")
                .POST(HttpRequest.BodyPublishers.ofByteArray(padded)));
        assertThat(atLimit.statusCode()).as(atLimit.body()).isEqualTo(200);
        byte[] over = Arrays.copyOf(padded, padded.length + 1);
        over[padded.length] = ' ';
        JsonNode announced = problem(send(as(Role.ENGINEER, CALCULATIONS + "impedance")
                .POST(HttpRequest.BodyPublishers.ofByteArray(over))), 413);
        assertThat(announced.get("detail").stringValue()).contains("16 MiB");
        problem(send(as(Role.ENGINEER, CALCULATIONS + "impedance")
                .POST(HttpRequest.BodyPublishers.fromPublisher(HttpRequest.BodyPublishers.ofByteArray(over)))), 413);
    }

    @Test
    void uploadOverTheLimitIs413() throws Exception {
        String boundary = "----boundary";
        byte[] head = ("--" + boundary + "\r\nContent-Disposition: form-data; name=\"fixture\"\r\n\r\nimpedance\r\n--" + boundary
                + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"big.csv\"\r\n\r\n").getBytes();
        byte[] form = Arrays.copyOf(head, head.length + (21 << 20));
        Arrays.fill(form, head.length, form.length, (byte) '1');
        byte[] tail = ("\r\n--" + boundary + "--\r\n").getBytes();
        System.arraycopy(tail, 0, form, form.length - tail.length, tail.length);
        JsonNode problem = problem(send(request(CALCULATIONS + "sweep")
                .header("Authorization", "Bearer " + people.token(Role.ENGINEER))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(HttpRequest.BodyPublishers.ofByteArray(form))), 413);
        assertThat(problem.get("detail").stringValue()).contains("20 MiB");
    }

    @Test
    void partOfTheLibraryLendsItsModel() throws Exception {
        PartDocument part = new PartDocument("CALC-100U", "Invented Parts", Technology.POLYMER_ALUMINIUM, 100e-6, null, 16,
                List.of(new LossFigure(LossFigure.Kind.ESR, 0.02, 100e3, LossFigure.Bound.TYPICAL)), 2e-9, null, null, null, null, null,
                null, null, null, null, null, null, null, ModelChoice.DATASHEET, null, null, null);
        propose(part, people.with(Role.ENGINEER));
        HttpResponse<String> response = send(as(Role.ENGINEER, CALCULATIONS + "impedance").POST(body(Json.impedance(
                Json.of("{'branches': [{'count': 1, 'part': 'CALC-100U'}]}"), Json.of("{'frequencyHz': [100000]}")))));
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        JsonNode answer = MAPPER.readTree(response.body());
        assertThat(answer.get("resistanceOhm").get(0).doubleValue()).isCloseTo(0.02, Percentage.withPercentage(1e-6));
        assertThat(answer.get("reactanceOhm").get(0).doubleValue())
                .isCloseTo(2 * Math.PI * 1e5 * 2e-9 - 1 / (2 * Math.PI * 1e5 * 100e-6), Percentage.withPercentage(1e-6));
    }

    private void propose(PartDocument part, CurrentPerson author) {
        SecurityContextHolder.getContext().setAuthentication(
                UsernamePasswordAuthenticationToken.authenticated(author, null, author.getAuthorities()));
        try {
            library.propose(part, author);
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    @Test
    void unknownPartIsNamed() throws Exception {
        JsonNode problem = problem(send(as(Role.ENGINEER, CALCULATIONS + "impedance").POST(body(Json.impedance(
                Json.of("{'branches': [{'count': 1, 'part': 'NO-SUCH-PART'}]}"), Json.grid(1e3, 1e6, 10))))), 400);
        assertThat(problem.get("errors").get(0).get("field").stringValue()).isEqualTo("bank.branches[0].part");
    }

    @Test
    void descriptionIsPublished() throws Exception {
        HttpResponse<String> response = send(request("/api/openapi").GET());
        assertThat(response.statusCode()).isEqualTo(200);
        JsonNode api = MAPPER.readTree(response.body());
        assertThat(api.get("info").get("title").stringValue()).isEqualTo("Stillrail calculation API");
        assertThat(api.get("paths").propertyNames()).containsExactlyInAnyOrder(
                CALCULATIONS + "impedance", CALCULATIONS + "ripple", CALCULATIONS + "loop", CALCULATIONS + "step",
                CALCULATIONS + "fit", CALCULATIONS + "sweep");
        JsonNode impedance = api.get("paths").get(CALCULATIONS + "impedance").get("post");
        assertThat(impedance.get("responses").propertyNames()).contains("200", "400", "401", "403", "413", "415", "503");
        assertThat(impedance.get("requestBody").get("content").get("application/json").get("example").get("bank")).isNotNull();
        JsonNode schemas = api.get("components").get("schemas");
        assertThat(schemas.propertyNames()).contains("ImpedanceRequest", "Bank", "Branch", "Model", "SeriesRlcModel", "TableModel",
                "DatasheetModel", "Grid", "OperatingPoint", "RippleRequest", "Current", "LoopRequest", "Converter", "Control",
                "StepRequest", "FitRequest", "ImpedanceAnswer", "RippleAnswer", "LoopAnswer", "StepAnswer", "FitAnswer",
                "SweepAnswer", "Problem");
        JsonNode rlc = schemas.get("SeriesRlcModel");
        assertThat(rlc.get("properties").propertyNames()).containsExactly("kind", "capacitanceF", "resistanceOhm", "inductanceH");
        assertThat(rlc.get("properties").get("kind").get("enum").get(0).stringValue()).isEqualTo("series-rlc");
        assertThat(rlc.get("required")).hasSize(4);
        assertThat(rlc.has("allOf")).isFalse();
        assertThat(schemas.get("Model").get("oneOf")).hasSize(3);
        assertThat(schemas.get("Branch").get("required").toString()).contains("count");
    }
}
