package org.stillrail.calculation;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validation;
import jakarta.validation.ValidatorFactory;
import java.util.Comparator;
import java.util.Locale;
import org.hibernate.validator.HibernateValidator;
import org.hibernate.validator.messageinterpolation.ResourceBundleMessageInterpolator;
import org.hibernate.validator.resourceloading.PlatformResourceBundleLocator;
import org.springframework.stereotype.Component;

/** Checks the constraints that a request record declares on single fields; in English, whatever the caller's language. */
@Component
class Constraints implements AutoCloseable {

    private static final String LIST_ELEMENT = ".<list element>";

    private final ValidatorFactory factory = Validation.byProvider(HibernateValidator.class).configure()
            .defaultLocale(Locale.ENGLISH)
            .messageInterpolator(new ResourceBundleMessageInterpolator(
                    new PlatformResourceBundleLocator("org.stillrail.calculation.constraints")))
            .buildValidatorFactory();

    void check(Object request, FieldProblems problems) {
        factory.getValidator().validate(request).stream()
                .sorted(Comparator.comparing(Constraints::field))
                .forEach(violation -> problems.add(field(violation), violation.getMessage()));
    }

    private static String field(ConstraintViolation<?> violation) {
        return violation.getPropertyPath().toString().replace(LIST_ELEMENT, "");
    }

    @Override
    public void close() {
        factory.close();
    }
}
