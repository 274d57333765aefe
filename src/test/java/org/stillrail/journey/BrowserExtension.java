package org.stillrail.journey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.springframework.test.context.junit.jupiter.SpringExtension;

/**
 * Gives each {@link Visitor} parameter a session of its own and asks every visitor at the end what went wrong in the browser.
 * A failed journey leaves what its visitors saw last in target/journeys.
 */
final class BrowserExtension implements ExecutionCondition, ParameterResolver, AfterEachCallback {

    private static final ExtensionContext.Namespace NAMESPACE = ExtensionContext.Namespace.create(BrowserExtension.class);

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (Chromium.place().isPresent()) {
            return ConditionEvaluationResult.enabled("Chromium is here");
        }
        if (Chromium.isRequired()) {
            throw new IllegalStateException("No Chromium on this machine, and stillrail.browser.required is true");
        }
        return ConditionEvaluationResult.disabled("No Chromium on this machine");
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Visitor.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        String port = SpringExtension.getApplicationContext(context).getEnvironment().getRequiredProperty("local.server.port");
        Visitor visitor = new Visitor(Chromium.browser(), "http://127.0.0.1:" + port);
        visitorsOf(context).add(visitor);
        return visitor;
    }

    @Override
    public void afterEach(ExtensionContext context) {
        List<String> problems = new ArrayList<>();
        boolean failed = context.getExecutionException().isPresent();
        String name = context.getRequiredTestClass().getSimpleName() + "-" + context.getRequiredTestMethod().getName();
        int number = 0;
        for (Visitor visitor : visitorsOf(context)) {
            number++;
            if (failed) {
                visitor.photograph(Path.of("target/journeys", name + "-" + number + ".png"), true);
            }
            problems.addAll(visitor.problems());
            visitor.leave();
        }
        if (!problems.isEmpty() && !failed) {
            throw new AssertionError("The browser reported:\n" + String.join("\n", problems));
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Visitor> visitorsOf(ExtensionContext context) {
        return (List<Visitor>) context.getStore(NAMESPACE).computeIfAbsent("visitors", key -> new ArrayList<Visitor>());
    }
}
