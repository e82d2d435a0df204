package org.capwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published form of job files. Run with {@code -Dcapwright.writeDocs=true} it writes the two pages first, after a change
 * of the input declarations. The schema is tried with a validator from outside the project.
 */
class PublishedFormTest {
    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(JobSchema.text());

    @Test
    void theSchemaIsPublished() throws IOException {
        assertPublished("job.schema.json", JobSchema.text());
    }

    @Test
    void theInputsPageIsPublished() throws IOException {
        assertPublished("inputs.md", InputsPage.text());
    }

    @ParameterizedTest
    @MethodSource("org.capwright.store.JobFilesTest#demoJobs")
    void demoJobsFollowTheSchema(Path demo) throws IOException {
        assertThat(problems(Files.readString(demo))).isEmpty();
    }

    @Test
    void theSchemaItselfIsASchema() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(JobSchema.text(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "{}",
        "{'stack': {}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'wether': 1}",
        "{'stack': {'outsideDiameter': '18 in', 'slop': '1/8 in'}}",
        "{'stack': {'outsideDiameter': null}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'leaves': {'count': 3}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'leaves': {'metal': 'tin'}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'leaves': {'shrink': {'kappa': 1.01}}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'leaves': {'shrink': {'passes': 2.5}}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'hood': {'pieces': 'some'}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'hood': {'beads': 'two'}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'hood': {'beads': [{'width': '1/2 in'}]}}",
        "{'stack': {'outsideDiameter': '18 in'}, 'capwright': 2}"})
    void refuses(String job) {
        assertThat(problems(job.replace('\'', '"'))).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '@', value = {
        "stack; {'outsideDiameter': 18}",
        "hood; {'beads': []}",
        "hood; {'beads': 'auto', 'pieces': 'auto', 'aboveRim': 'auto'}",
        "hood; {'beads': [{'fromTop': '1 in'}], 'pieces': 2}",
        "leaves; {'count': 4, 'shrink': {'kappa': 1}}",
        "leaves; {'count': '6'}"})
    void takes(String group, String value) {
        String stack = group.equals("stack") ? "" : "'stack': {'outsideDiameter': '18 in'}, ";
        assertThat(problems(("{" + stack + "'" + group + "': " + value + "}").replace('\'', '"'))).isEmpty();
    }

    private static List<Error> problems(String job) {
        return SCHEMA.validate(job, InputFormat.JSON);
    }

    private static void assertPublished(String name, String text) throws IOException {
        Path page = Path.of("docs", name);
        if (Boolean.getBoolean("capwright.writeDocs")) {
            Files.createDirectories(page.getParent());
            Files.writeString(page, text);
        }
        // a checkout may have given the page other line ends
        assertThat(Files.readString(page).replace("\r\n", "\n")).isEqualTo(text);
    }
}
