package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.capwright.job.JobReader;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is drawn is what is measured: the span of every place is the value as drawn. */
class ReadingPlaceTest {
    static Stream<Path> demos() {
        return Stream.of("kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class").map(name -> Path.of("demo-jobs", name + ".json"));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyReadingHasAPlaceThatMeasuresItsValue(Path demo) {
        Cap cap = Cap.solve(JobReader.read(JobFiles.read(demo)).orThrow());
        for (SheetLine line : ReadingSheet.of(cap)) {
            List<ReadingPlace> places = ReadingPlace.of(line, cap);
            assertThat(places).as(line.words()).isNotEmpty();
            ReadingPlace first = places.get(0);
            double span = first.from().distance(first.to());
            if (line.path().endsWith("endPlay")) {
                assertThat(span).as(line.words()).isGreaterThan(0);
            } else if (line.section().equals("leaves") && line.words().startsWith("cover")) {
                // the cover is taken to the inside of the flange, the place shows its outside
                assertThat(span).as(line.words()).isCloseTo(line.drawnMm() + cap.leaves().get(0).sheet().thicknessMm(), within(1e-6));
            } else {
                assertThat(first.girth() ? 2 * Math.PI * span : span).as(line.words()).isCloseTo(line.drawnMm(), within(1e-6));
            }
        }
    }
}
