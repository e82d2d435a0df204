package org.capwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayerTest {
    private final Locale before = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    /** In files, the same in every language: a Turkish machine would lower I to a dotless letter. */
    @ParameterizedTest
    @CsvSource({"CUT, cut", "BEND, bend", "MARK, mark", "TEXT, text"})
    void words(Layer layer, String word) {
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertThat(layer.word()).isEqualTo(word);
    }
}
