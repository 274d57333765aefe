package org.stillrail.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;

/** A file over the limit is refused in words; the page that sent it stays as it is and shows them. */
@ControllerAdvice(annotations = Controller.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
class UploadTooLarge {

    private final UploadLimits limits;

    UploadTooLarge(UploadLimits limits) {
        this.limits = limits;
    }

    @ExceptionHandler
    ResponseEntity<String> refuse(MaxUploadSizeExceededException tooLarge, HttpServletRequest request) {
        return ResponseEntity.status(HttpStatus.CONTENT_TOO_LARGE)
                .contentType(MediaType.TEXT_PLAIN)
                .body(limits.refusal(request));
    }
}
