package org.stillrail.web;

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

    @ExceptionHandler
    ResponseEntity<String> refuse(MaxUploadSizeExceededException tooLarge) {
        return ResponseEntity.status(HttpStatus.CONTENT_TOO_LARGE)
                .contentType(MediaType.TEXT_PLAIN)
                .body("The file is larger than 20 MiB, the most that is taken. Nothing was stored.");
    }
}
