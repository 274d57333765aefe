package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.springframework.web.multipart.MultipartFile;

/** The fields of the form that {@code sweep} takes, for the published description only. */
@Schema(name = "SweepForm")
record SweepForm(
        @Schema(description = "A Touchstone file or delimited text, up to 20 MiB", requiredMode = Schema.RequiredMode.REQUIRED)
        MultipartFile file,
        @Schema(description = """
                How the part was connected: reflection (S11), shunt-through (S21; of Z data Z21), series-through (S21; of Y \
                data -1/Y21), or impedance for data that are one already""",
                requiredMode = Schema.RequiredMode.REQUIRED,
                allowableValues = {"reflection", "shunt-through", "series-through", "impedance"})
        String fixture,
        @Schema(description = "For delimited text: which column is what; found from the headings where absent",
                example = "frequency=1:kHz, resistance=3, reactance=-4:mOhm")
        String columns) {
}
