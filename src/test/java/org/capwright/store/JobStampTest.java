package org.capwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.capwright.job.JobText;
import org.junit.jupiter.api.Test;

class JobStampTest {
    private static final JobText JOB = JobText.of(Map.of("stack.outsideDiameter", "18 in"));

    @Test
    void isTheStartOfThePublishedHash() {
        // SHA-256 of no bytes at all, as published with the algorithm (FIPS 180-4 example values)
        assertThat(JobStamp.of(JobText.of(Map.of()))).isEqualTo("e3b0c442");
    }

    @Test
    void theOrderOfTheFieldsDoesNotCount() {
        Map<String, String> one = new LinkedHashMap<>();
        one.put("leaves.gap", "1/2 in");
        one.put("stack.outsideDiameter", "18 in");
        assertThat(JobStamp.of(JobText.of(one))).isEqualTo(JobStamp.of(JOB.with("leaves.gap", "1/2 in")));
    }

    @Test
    void everyTextOfTheDesignCounts() {
        assertThat(JobStamp.of(JOB)).isNotEqualTo(JobStamp.of(JOB.with("job.notes", "mind the gap")))
                .isNotEqualTo(JobStamp.of(JOB.with("stack.outsideDiameter", "18.0 in")))
                .isNotEqualTo(JobStamp.of(JOB.with("stack.slip", "1/8 in")));
    }

    @Test
    void readingsAndTolerancesDoNotChangeIt() {
        assertThat(JobStamp.of(JOB)).isEqualTo(JobStamp.of(JOB.with("fit.sleeveGirth", "57 in").with("held.sleeve", "cut")
                .with("fit.hoodBore[0].diameter", "22 in").with("tolerance.shift", "1/8 in")));
    }

    @Test
    void aTextThatLooksLikeTwoIsNotTwo() {
        JobText two = JOB.with("job.name", "a").with("job.notes", "b");
        JobText one = JOB.with("job.name", "a\njob.notes 1 b");

        assertThat(JobStamp.of(one)).isNotEqualTo(JobStamp.of(two));
    }
}
