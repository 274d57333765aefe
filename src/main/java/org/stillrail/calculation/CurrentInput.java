package org.stillrail.calculation;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import io.swagger.v3.oas.annotations.media.DiscriminatorMapping;
import io.swagger.v3.oas.annotations.media.Schema;

/** A periodic current into the output node. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = BuckInput.class, name = "buck"),
    @JsonSubTypes.Type(value = PiecewiseLinearInput.class, name = "piecewise-linear")
})
@Schema(name = "Current", description = "Periodic current into the output node; its mean is removed.",
        discriminatorProperty = "kind", oneOf = {BuckInput.class, PiecewiseLinearInput.class},
        discriminatorMapping = {
            @DiscriminatorMapping(value = "buck", schema = BuckInput.class),
            @DiscriminatorMapping(value = "piecewise-linear", schema = PiecewiseLinearInput.class)
        })
sealed interface CurrentInput permits BuckInput, PiecewiseLinearInput {
}
