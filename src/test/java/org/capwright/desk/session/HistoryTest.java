package org.capwright.desk.session;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {
    @Test
    void editsOfOneFieldAreOneStepUntilSealed() {
        History<String> history = new History<>("");
        history.go("1", "field");
        history.go("18", "field");
        history.seal();
        history.go("18 in", "field");
        assertThat(history.undo()).contains("18");
        assertThat(history.undo()).contains("");
        assertThat(history.undo()).isEmpty();
        assertThat(history.redo()).contains("18");
        assertThat(history.redo()).contains("18 in");
        assertThat(history.redo()).isEmpty();
    }

    @Test
    void aNewEditForgetsWhatWasUndone() {
        History<String> history = new History<>("a");
        history.go("b", "x");
        history.undo();
        history.go("c", "y");
        assertThat(history.canRedo()).isFalse();
        assertThat(history.undo()).contains("a");
    }

    @Test
    void sealedEditsWithoutAKeyStandByThemselves() {
        History<String> history = new History<>("a");
        history.go("b", "field");
        history.seal();
        history.go("c", "");
        history.seal();
        history.go("d", "");
        assertThat(history.undo()).contains("c");
        assertThat(history.undo()).contains("b");
        assertThat(history.undo()).contains("a");
    }

    @Test
    void theSameStateIsNoEdit() {
        History<String> history = new History<>("a");
        history.go("a", "x");
        assertThat(history.canUndo()).isFalse();
    }

    @Test
    void theOldestAreForgotten() {
        History<Integer> history = new History<>(0);
        for (int i = 1; i <= 600; i++) {
            history.go(i, "key " + i);
        }
        int undone = 0;
        while (history.undo().isPresent()) {
            undone++;
        }
        assertThat(undone).isEqualTo(500);
        assertThat(history.present()).isEqualTo(100);
    }
}
