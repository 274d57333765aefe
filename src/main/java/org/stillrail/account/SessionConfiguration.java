package org.stillrail.account;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.converter.Converter;
import org.springframework.core.convert.support.GenericConversionService;
import org.springframework.core.serializer.support.DeserializingConverter;
import org.springframework.core.serializer.support.SerializationFailedException;
import org.springframework.core.serializer.support.SerializingConverter;

/** How session attributes become bytes. */
@Configuration(proxyBeanMethods = false)
class SessionConfiguration {

    /** After an update of the application an old session may not be readable: its owner is asked to sign in again. */
    @Bean
    GenericConversionService springSessionConversionService() {
        DeserializingConverter read = new DeserializingConverter(getClass().getClassLoader());
        Converter<byte[], Object> readOrNothing = bytes -> {
            try {
                return read.convert(bytes);
            } catch (SerializationFailedException unreadable) {
                return null;
            }
        };
        GenericConversionService conversion = new GenericConversionService();
        conversion.addConverter(Object.class, byte[].class, new SerializingConverter());
        conversion.addConverter(byte[].class, Object.class, readOrNothing);
        return conversion;
    }
}
