package org.stillrail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.stillrail.support.AppTest;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.json.JsonMapper;

/** The mapper that reads the bodies of API calls takes only what was meant. */
@AppTest
class StrictJsonTest {

    record Point(double valueOhm, Double optionalOhm, int count, double[] frequencyHz) {}

    record Points(List<Point> points) {}

    @Autowired
    private JsonMapper json;

    @Test
    void readsWhatIsWellFormed() {
        Point point = json.readValue("{\"valueOhm\":-1.5e-3,\"count\":2,\"frequencyHz\":[1,2.5,1e6]}", Point.class);
        assertThat(point.valueOhm()).isEqualTo(-1.5e-3);
        assertThat(point.optionalOhm()).isNull();
        assertThat(point.count()).isEqualTo(2);
        assertThat(point.frequencyHz()).containsExactly(1, 2.5, 1e6);
    }

    @Test
    void aLongListKeepsEveryNumber() {
        StringBuilder numbers = new StringBuilder("0");
        for (int i = 1; i < 1_000; i++) {
            numbers.append(',').append(i);
        }
        double[] read = json.readValue("[" + numbers + "]", double[].class);
        assertThat(read).hasSize(1_000);
        assertThat(read[999]).isEqualTo(999);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "valueOhm":"1"                      | points[0].valueOhm       | must be a number
            "valueOhm":"NaN"                    | points[0].valueOhm       | must be a number
            "valueOhm":1e999                    | points[0].valueOhm       | must be a finite number
            "valueOhm":-1e999                   | points[0].valueOhm       | must be a finite number
            "valueOhm":null                     | points[0].valueOhm       | must be a number
            "valueOhm":true                     | points[0].valueOhm       | must be a number
            "optionalOhm":1                     | points[0].valueOhm       | is missing
            "valueOhm":1,"optionalOhm":1e999    | points[0].optionalOhm    | must be a finite number
            "valueOhm":1,"count":2.7            | points[0].count          | 2.7
            "valueOhm":1,"count":"2"            | points[0].count          | String
            "valueOhm":1,"frequencyHz":[1,"2"]  | points[0].frequencyHz[1] | must be a number
            "valueOhm":1,"frequencyHz":[1,null] | points[0].frequencyHz[1] | must be a number
            "valueOhm":1,"frequencyHz":[1e999]  | points[0].frequencyHz[0] | must be a finite number
            "valueOhm":1,"frequencyHz":7        | points[0].frequencyHz    | must be a list of numbers
            "valueOhm":1,"count":1,"surplus":1  | points[0].surplus        | surplus
            """)
    void refusesAndNamesTheField(String members, String field, String reason) {
        DatabindException refused = catchThrowableOfType(
                DatabindException.class, () -> json.readValue("{\"points\":[{" + members + "}]}", Points.class));
        assertThat(path(refused)).isEqualTo(field);
        assertThat(refused.getOriginalMessage()).contains(reason);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {"valueOhm":1,"valueOhm":2}
            {"valueOhm":NaN}
            {"valueOhm":Infinity}
            {"valueOhm":1
            """)
    void refusesWhatIsNoJson(String text) {
        assertThat(catchThrowableOfType(JacksonException.class, () -> json.readValue(text, Point.class))).isNotNull();
    }

    private static String path(JacksonException refused) {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : refused.getPath()) {
            if (step.getPropertyName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getPropertyName());
            }
        }
        return path.toString();
    }
}
