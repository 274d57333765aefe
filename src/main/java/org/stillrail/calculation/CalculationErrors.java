package org.stillrail.calculation;

import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.multipart.MultipartException;
import org.stillrail.web.NoAnswerException;

/** Refusals of this API as problem documents (RFC 9457). */
@RestControllerAdvice(basePackageClasses = CalculationController.class)
class CalculationErrors {

    private static final Logger LOG = LoggerFactory.getLogger(CalculationErrors.class);
    private static final String BUSY_SECONDS = "5";

    @ExceptionHandler
    ResponseEntity<ProblemDetail> badInput(BadInputException refused) {
        return badInput(refused.problems());
    }

    private static ResponseEntity<ProblemDetail> badInput(List<FieldProblem> problems) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, summary(problems));
        problem.setProperty("errors", problems);
        return answer(problem);
    }

    private static String summary(List<FieldProblem> problems) {
        if (problems.size() > 1) {
            return problems.size() + " fields are wrong";
        }
        FieldProblem problem = problems.get(0);
        return (problem.field().equals(FieldProblem.BODY) ? "The request" : problem.field()) + " " + problem.message();
    }

    /** Said in full, for a caller who accepts plain JSON only would get it under that name. */
    private static ResponseEntity<ProblemDetail> answer(ProblemDetail problem) {
        return ResponseEntity.status(problem.getStatus()).contentType(MediaType.APPLICATION_PROBLEM_JSON).body(problem);
    }

    /** Only an empty body ends here: everything else is read by {@link RequestBodies}. */
    @ExceptionHandler
    ResponseEntity<ProblemDetail> noBody(HttpMessageNotReadableException refused) {
        return badInput(List.of(new FieldProblem(FieldProblem.BODY, "is empty; a JSON object is expected")));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> tooLarge(BodyTooLargeException refused) {
        return answer(ProblemDetail.forStatusAndDetail(HttpStatus.CONTENT_TOO_LARGE, refused.getMessage()));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> noForm(MultipartException refused) {
        return badInput(List.of(new FieldProblem(FieldProblem.BODY, "cannot be read as multipart/form-data")));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> noAnswer(NoAnswerException refused) {
        if (refused.getCause() != null) {
            LOG.error("A calculation broke off", refused.getCause());
        }
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, BUSY_SECONDS)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(ProblemDetail.forStatusAndDetail(HttpStatus.SERVICE_UNAVAILABLE, refused.getMessage()));
    }

    /** The physics checks its arguments too, and its messages name them. */
    @ExceptionHandler
    ResponseEntity<ProblemDetail> outOfRange(IllegalArgumentException refused) {
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
