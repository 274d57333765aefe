package org.stillrail.calculation;

import java.io.IOException;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.HttpOutputMessage;
import org.springframework.http.MediaType;
import org.springframework.http.converter.AbstractHttpMessageConverter;
import org.springframework.stereotype.Component;

/** Carries requests and answers of this API over HTTP, in place of the general JSON converter. */
@Component
class CalculationJsonConverter extends AbstractHttpMessageConverter<Object> {

    private final RequestBodies bodies;
    private final AnswerWriter answers;

    CalculationJsonConverter(RequestBodies bodies, AnswerWriter answers) {
        super(MediaType.APPLICATION_JSON);
        this.bodies = bodies;
        this.answers = answers;
    }

    @Override
    protected boolean supports(Class<?> type) {
        return CalculationRequest.class.isAssignableFrom(type) || CalculationAnswer.class.isAssignableFrom(type);
    }

    @Override
    protected Object readInternal(Class<?> type, HttpInputMessage message) throws IOException {
        return bodies.read(message.getBody(), message.getHeaders().getContentLength(), type);
    }

    @Override
    protected void writeInternal(Object answer, HttpOutputMessage message) throws IOException {
        byte[] json = answers.write((CalculationAnswer) answer);
        message.getHeaders().setContentLength(json.length);
        message.getBody().write(json);
    }
}
