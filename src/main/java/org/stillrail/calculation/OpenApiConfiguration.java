package org.stillrail.calculation;

import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.customizers.OperationCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.method.HandlerMethod;
import tools.jackson.databind.json.JsonMapper;

/** The published description at {@code /api/openapi}: what no annotation on a handler can say once for all of them. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    private static final String TOKEN = "token";
    private static final String PROBLEM = "Problem";

    private static final Map<String, String> REFUSALS = new TreeMap<>(Map.of(
            "400", "Bad input; errors names every wrong field by its JSON path",
            "401", "No token, or a token that is not known",
            "403", "The owner of the token holds none of the roles engineer, librarian and reviewer",
            "413", "The body is over its limit",
            "415", "Another content type than the one described",
            "503", "The calculation took too long or too many wait; the detail says which"));

    @Bean
    OpenAPI description() {
        return new OpenAPI()
                .info(new Info().title("Stillrail calculation API").version("1").description("""
                        The calculations that the pages show, callable from a script. Stateless: nothing is stored.

                        All quantities are in SI units, named in the field: Hz, ohm, F, H, V, A, s, W, degC; angles in degrees.
                        Arrays with one entry for each frequency or time have equal lengths. No number is ever NaN or infinite;
                        a figure that does not exist is null. `warnings` says in sentences what a reader should know.

                        Limits of a call: %d branches, %d grid points, %d table points in all, a body of %d MiB (a sweep file of
                        20 MiB), and 2 s of computing.

                        A token is made on the account page. It holds its owner's roles; engineers, librarians and reviewers
                        may calculate.""".formatted(Limits.BRANCHES, Limits.GRID_POINTS, Limits.TABLE_POINTS, Limits.BODY_MIB)))
                .components(new Components().addSecuritySchemes(TOKEN, new SecurityScheme()
                        .type(SecurityScheme.Type.HTTP).scheme("bearer").description("Authorization: Bearer TOKEN")))
                .addSecurityItem(new SecurityRequirement().addList(TOKEN));
    }

    /** The shape of refusals, which no handler returns. */
    @Bean
    OpenApiCustomizer problemSchema() {
        return api -> ModelConverters.getInstance().readAll(ProblemBody.class).forEach(api.getComponents()::addSchemas);
    }

    /**
     * A choice by kind refers to its members; the generator makes the members refer back to the choice, which no validator can
     * follow. Here each member becomes an object of its own with its kind.
     */
    @Bean
    OpenApiCustomizer plainChoices() {
        return api -> List.copyOf(api.getComponents().getSchemas().keySet()).forEach(name -> {
            Schema<?> choice = schema(api, name);
            if (choice.getDiscriminator() != null) {
                choice.setProperties(null);
                choice.setRequired(null);
                choice.getDiscriminator().getMapping().forEach((kind, reference) ->
                        makePlain(schema(api, reference.substring(reference.lastIndexOf('/') + 1)), kind));
            }
        });
    }

    private static Schema<?> schema(OpenAPI api, String name) {
        return api.getComponents().getSchemas().get(name);
    }

    private static void makePlain(Schema<?> member, String kind) {
        Schema<?> own = member.getAllOf().get(member.getAllOf().size() - 1);
        member.setAllOf(null);
        member.setType("object");
        member.setTypes(Set.of("object"));
        member.addProperty("kind", new StringSchema().addEnumItem(kind));
        own.getProperties().forEach(member::addProperty);
        member.addRequiredItem("kind");
    }

    @Bean
    OperationCustomizer refusalsAndExamples(JsonMapper mapper) {
        return (operation, handler) -> {
            if (handler.getBeanType() == CalculationController.class) {
                addRefusals(operation);
                addExample(operation, handler, mapper);
            }
            return operation;
        };
    }

    private static void addRefusals(Operation operation) {
        Content body = new Content().addMediaType("application/problem+json",
                new MediaType().schema(new Schema<>().$ref("#/components/schemas/" + PROBLEM)));
        REFUSALS.forEach((status, meaning) ->
                operation.getResponses().addApiResponse(status, new ApiResponse().description(meaning).content(body)));
    }

    private static void addExample(Operation operation, HandlerMethod handler, JsonMapper mapper) {
        MediaType json = operation.getRequestBody().getContent().get("application/json");
        if (json != null) {
            json.setExample(example(handler.getMethod().getName(), mapper));
        }
    }

    private static Object example(String name, JsonMapper mapper) {
        try (InputStream file = OpenApiConfiguration.class.getResourceAsStream("examples/" + name + ".json")) {
            return mapper.readValue(file, Object.class);
        } catch (IOException e) {
            throw new IllegalStateException("No example for " + name, e);
        }
    }
}
