package org.stillrail;

import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.module.SimpleModule;

/** What no property reaches: duplicate keys and numbers that are not finite are refused. */
@Configuration(proxyBeanMethods = false)
class StrictJsonConfiguration {

    @Bean
    JsonMapperBuilderCustomizer strictJson() {
        SimpleModule finite = new SimpleModule("finite-numbers");
        finite.addDeserializer(double.class, FiniteNumber.primitive());
        finite.addDeserializer(Double.class, FiniteNumber.boxed());
        finite.addDeserializer(double[].class, new FiniteNumbers());
        return builder -> builder.enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).addModule(finite);
    }
}
