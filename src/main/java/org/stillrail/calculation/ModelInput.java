package org.stillrail.calculation;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import io.swagger.v3.oas.annotations.media.DiscriminatorMapping;
import io.swagger.v3.oas.annotations.media.Schema;

/** An inline model of one part. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = SeriesRlcInput.class, name = "series-rlc"),
    @JsonSubTypes.Type(value = TableInput.class, name = "table"),
    @JsonSubTypes.Type(value = DatasheetInput.class, name = "datasheet")
})
@Schema(name = "Model", description = "Impedance of one part, by kind.", discriminatorProperty = "kind",
        oneOf = {SeriesRlcInput.class, TableInput.class, DatasheetInput.class},
        discriminatorMapping = {
            @DiscriminatorMapping(value = "series-rlc", schema = SeriesRlcInput.class),
            @DiscriminatorMapping(value = "table", schema = TableInput.class),
            @DiscriminatorMapping(value = "datasheet", schema = DatasheetInput.class)
        })
sealed interface ModelInput permits SeriesRlcInput, TableInput, DatasheetInput {
}
