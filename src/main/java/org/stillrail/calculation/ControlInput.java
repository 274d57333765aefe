package org.stillrail.calculation;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import io.swagger.v3.oas.annotations.media.DiscriminatorMapping;
import io.swagger.v3.oas.annotations.media.Schema;

/** How the converter is controlled. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = VoltageModeInput.class, name = "voltage-mode"),
    @JsonSubTypes.Type(value = CurrentModeInput.class, name = "current-mode")
})
@Schema(name = "Control", description = "Control of the converter, by kind. Exactly one of compensator and design is given.",
        discriminatorProperty = "kind", oneOf = {VoltageModeInput.class, CurrentModeInput.class},
        discriminatorMapping = {
            @DiscriminatorMapping(value = "voltage-mode", schema = VoltageModeInput.class),
            @DiscriminatorMapping(value = "current-mode", schema = CurrentModeInput.class)
        })
sealed interface ControlInput extends CrossChecked permits VoltageModeInput, CurrentModeInput {

    CompensatorInput compensator();

    DesignInput design();

    @Override
    default void check(String path, FieldProblems problems) {
        if (compensator() != null && design() != null) {
            problems.add(path, "has both compensator and design; give one of them");
        } else if (compensator() == null && design() == null) {
            problems.add(path, "has neither compensator nor design; give one of them");
        }
    }
}
