package org.capwright.desk.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

class LatestTest {
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private final List<String> heard = new ArrayList<>();
    private final Latest latest = new Latest(waiting::addLast, Runnable::run);

    @Test
    void anAnswerThatIsOvertakenIsDropped() {
        latest.ask(overtaken -> "first", heard::add, e -> heard.add("failed"));
        latest.ask(overtaken -> "second", heard::add, e -> heard.add("failed"));
        waiting.removeFirst().run();
        waiting.removeFirst().run();
        assertThat(heard).containsExactly("second");
    }

    @Test
    void workThatIsOvertakenWhileItRunsIsToldSo() {
        List<Boolean> seen = new ArrayList<>();
        latest.ask(overtaken -> {
            seen.add(overtaken.getAsBoolean());
            latest.ask(later -> "second", heard::add, e -> { });
            seen.add(overtaken.getAsBoolean());
            latest.tell(overtaken, () -> heard.add("news of the first"));
            return "first";
        }, heard::add, e -> { });
        waiting.removeFirst().run();
        assertThat(seen).containsExactly(false, true);
        assertThat(heard).isEmpty();
        waiting.removeFirst().run();
        assertThat(heard).containsExactly("second");
    }

    @Test
    void newsComesBeforeTheAnswerAndFailuresAreToldToo() {
        latest.<String>ask((BooleanSupplier overtaken) -> {
            latest.tell(overtaken, () -> heard.add("news"));
            throw new IllegalStateException("no answer");
        }, heard::add, e -> heard.add(e.getMessage()));
        waiting.removeFirst().run();
        assertThat(heard).containsExactly("news", "no answer");
    }

    @Test
    void nothingIsHeardOfWhatWasDropped() {
        latest.ask(overtaken -> "first", heard::add, e -> { });
        latest.drop();
        waiting.removeFirst().run();
        assertThat(heard).isEmpty();
    }
}
