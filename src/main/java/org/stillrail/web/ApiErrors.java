package org.stillrail.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;

/**
 * Answers what the framework itself refuses under {@code /api} (no such address, method, or media type) with a problem
 * document (RFC 9457). Pages keep their error pages.
 */
@ControllerAdvice
class ApiErrors {

    private static final String API = "/api/";

    @ExceptionHandler
    ResponseEntity<ProblemDetail> refused(ServletException refused, HttpServletRequest request) throws ServletException {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        if (refused instanceof ErrorResponse response && path.startsWith(API)) {
            return ResponseEntity.status(response.getStatusCode())
                    .headers(response.getHeaders())
                    .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                    .body(response.getBody());
        }
        throw refused;
    }
}
