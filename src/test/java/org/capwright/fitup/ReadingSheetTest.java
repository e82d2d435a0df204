package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.capwright.geom.Vec2;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.store.JobFiles;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingSheetTest {
    private static final double CLOSE_MM = 1e-3;

    /** Every reading as drawn, typed in the sheet's order, gives the drawn cap back. */
    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "woodwork-class", "grain-dryer-hall"})
    void readingsAsDrawnGiveTheDrawnCap(String demo) {
        Cap drawn = Cap.solve(unmeasured(demo));
        JobText text = drawn.job().text();
        int lines = ReadingSheet.of(drawn).size();
        for (int i = 0; i < lines; i++) {
            List<SheetLine> sheet = ReadingSheet.of(Cap.solve(JobReader.read(text).orThrow()));
            assertThat(sheet).as("the sheet keeps its lines").hasSize(lines);
            text = sheet.get(i).type(text, String.format(Locale.ROOT, "%.9f mm", sheet.get(i).drawnMm()));
        }
        CapJob measured = JobReader.read(text).orThrow();
        FitUp fitUp = FitUp.of(measured);

        assertThat(ReadingSheet.of(Cap.solve(measured))).allSatisfy(line -> assertThat(line.typed()).isNotEmpty());
        assertThat(fitUp.hood().terms()).isEqualTo(new Terms(true, 2, 2));
        assertThat(fitUp.work().hood().ovalityMm()).isLessThan(CLOSE_MM);
        assertThat(fitUp.work().hood().centre().distance(Vec2.ZERO)).isLessThan(CLOSE_MM);
        assertThat(fitUp.rederived().held()).contains("sleeve", "hood", "leaves", "gutter", "rods");
        assertThat(fitUp.rederived().changes(drawn)).isEmpty();
        for (Leaf leaf : drawn.leaves()) {
            for (Pair pair : List.of(Pair.LEAF_HOOD, Pair.HEEL_WALL, Pair.LEAF_SLEEVE)) {
                double asDrawn = Swing.of(drawn).least(pair, leaf.number()).leastMm();
                assertThat(fitUp.swing().least(pair, leaf.number(), 1).leastMm()).as("%s", pair).isCloseTo(asDrawn, within(0.01));
                assertThat(fitUp.swing().least(pair, leaf.number(), -1).leastMm()).as("%s", pair).isCloseTo(asDrawn, within(0.01));
            }
        }
    }

    @Test
    void typedReadingsKeepTheirPlaces() {
        JobText text = unmeasured("kiln-room").text().with("fit.hoodBore[2].azimuth", "75 deg").with("fit.hoodBore[2].radius", "11 in");
        List<SheetLine> hood = ReadingSheet.of(Cap.solve(JobReader.read(text).orThrow())).stream().filter(line -> line.section().equals("hood")).toList();

        assertThat(hood).hasSize(6);
        assertThat(hood.get(1).path()).isEqualTo("fit.hoodBore[1].diameter");
        assertThat(hood.get(2).path()).isEqualTo("fit.hoodBore[2].radius");
        assertThat(hood.get(2).words()).isEqualTo("inside radius from the axis at 75.0 deg");
        assertThat(hood.get(2).typed()).isEqualTo("11 in");
    }

    private static CapJob unmeasured(String demo) {
        Map<String, String> texts = new LinkedHashMap<>(JobFiles.read(Path.of("demo-jobs", demo + ".json")).texts());
        texts.keySet().removeIf(path -> path.startsWith("fit."));
        return JobReader.read(JobText.of(texts)).orThrow();
    }
}
