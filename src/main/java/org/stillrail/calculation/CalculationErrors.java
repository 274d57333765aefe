package org.stillrail.calculation;

import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.multipart.MultipartException;

/** Refusals of this API as problem documents (RFC 9457). */
@RestControllerAdvice(basePackageClasses = CalculationController.class)
class CalculationErrors {

    private static final Logger LOG = LoggerFactory.getLogger(CalculationErrors.class);
    private static final String BUSY_SECONDS = "5";

    @ExceptionHandler
    ProblemDetail badInput(BadInputException refused) {
        return badInput(refused.problems());
    }

    private static ProblemDetail badInput(List<FieldProblem> problems) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, problems.size() == 1
                ? problems.get(0).field() + " " + problems.get(0).message()
                : problems.size() + " fields are wrong");
        problem.setProperty("errors", problems);
        return problem;
    }

    /** Only an empty body ends here: everything else is read by {@link RequestBodies}. */
    @ExceptionHandler
    ProblemDetail noBody(HttpMessageNotReadableException refused) {
        return badInput(List.of(new FieldProblem(FieldProblem.BODY, "is empty; a JSON object is expected")));
    }

    @ExceptionHandler
    ProblemDetail tooLarge(BodyTooLargeException refused) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.CONTENT_TOO_LARGE, refused.getMessage());
    }

    @ExceptionHandler
    ProblemDetail noForm(MultipartException refused) {
        return badInput(List.of(new FieldProblem(FieldProblem.BODY, "cannot be read as multipart/form-data")));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> noAnswer(NoAnswerException refused) {
        if (refused.getCause() != null) {
            LOG.error("A calculation broke off", refused.getCause());
        }
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, BUSY_SECONDS)
                .body(ProblemDetail.forStatusAndDetail(HttpStatus.SERVICE_UNAVAILABLE, refused.getMessage()));
    }

    /** The physics checks its arguments too, and its messages name them. */
    @ExceptionHandler
    ProblemDetail outOfRange(IllegalArgumentException refused) {
        return badInput(List.of(new FieldProblem(FieldProblem.BODY, "is refused: " + refused.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> unforeseen(RuntimeException fault) {
        if (fault instanceof AccessDeniedException || fault instanceof AuthenticationException) {
            throw fault;
        }
        return noAnswer(NoAnswerException.failed(fault));
    }
}
