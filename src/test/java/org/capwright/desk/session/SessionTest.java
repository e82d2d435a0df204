package org.capwright.desk.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.capwright.job.GutterInputs;
import org.capwright.job.JobText;
import org.capwright.job.StackInputs;
import org.capwright.store.DeskFolder;
import org.capwright.store.JobFiles;
import org.capwright.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionTest {
    private static final Path DEMO = Path.of("demo-jobs", "kiln-room.json");

    @TempDir
    private Path folder;

    private Session session() {
        return new Session(JobFiles.read(DEMO), Shop.of(new DeskFolder(folder.resolve("shop"))));
    }

    @Test
    void badTextStaysAndTheLastGoodCapToo() {
        Session session = session();
        Solved good = session.solvedProperty().get();
        session.type(StackInputs.OUTSIDE_DIAMETER, "eighteen");
        assertThat(session.textProperty().get().at("stack.outsideDiameter")).contains("eighteen");
        assertThat(session.problemsProperty().get()).singleElement().satisfies(problem -> assertThat(problem.path()).isEqualTo("stack.outsideDiameter"));
        assertThat(session.solvedProperty().get()).isSameAs(good);
        session.type(StackInputs.OUTSIDE_DIAMETER, "19 in");
        assertThat(session.problemsProperty().get()).isEmpty();
        assertThat(session.solvedProperty().get().cap().sleeve().insideRadiusMm()).isGreaterThan(good.cap().sleeve().insideRadiusMm());
    }

    @Test
    void everyEditCanBeUndoneAndDoneAgain() {
        Session session = session();
        JobText first = session.textProperty().get();
        session.type(GutterInputs.INSIDE_WIDTH, "2 in");
        session.type(Map.of("leaves.cover", "5/8 in", "hood.annulus", "2 1/2 in"));
        JobText last = session.textProperty().get();
        session.undo();
        session.undo();
        assertThat(session.textProperty().get()).isEqualTo(first);
        assertThat(session.unsavedProperty().get()).isFalse();
        session.redo();
        session.redo();
        assertThat(session.textProperty().get()).isEqualTo(last);
        assertThat(session.solvedProperty().get().cap().gutters().get(0).insideWidthMm()).isEqualTo(50.8);
    }

    @Test
    void nothingTypedLeavesTheInputOut() {
        Session session = session();
        session.type(GutterInputs.INSIDE_WIDTH, "  ");
        assertThat(session.textProperty().get().at("gutter.insideWidth")).isEmpty();
        assertThat(session.problemsProperty().get()).isEmpty();
    }

    @Test
    void savingAndOpening() {
        Session session = session();
        session.type(StackInputs.OUTSIDE_DIAMETER, "20 1/4 in");
        assertThat(session.unsavedProperty().get()).isTrue();
        Path file = folder.resolve("cap.json");
        session.save(file);
        assertThat(session.unsavedProperty().get()).isFalse();
        assertThat(session.fileProperty().get()).contains(file);
        Session other = session();
        other.open(file);
        assertThat(other.textProperty().get().at("stack.outsideDiameter")).contains("20 1/4 in");
        assertThat(other.unsavedProperty().get()).isFalse();
    }

    @Test
    void aFileThatCannotBeReadChangesNothing() {
        Session session = session();
        JobText before = session.textProperty().get();
        assertThatThrownBy(() -> session.open(folder.resolve("none.json"))).isInstanceOf(StoreException.class);
        assertThat(session.textProperty().get()).isEqualTo(before);
        assertThat(session.solvedProperty().get()).isNotNull();
    }

    @Test
    void aDraftSurvivesACrash() throws Exception {
        DeskFolder desk = new DeskFolder(folder.resolve("desk"));
        Session session = session();
        session.type(StackInputs.OUTSIDE_DIAMETER, "22 in");
        assertThat(desk.keepDraft(session.textProperty().get(), Optional.of(DEMO))).isTrue();
        Session after = session();
        after.recover(desk.draft().orElseThrow(), desk.draftOf());
        assertThat(after.textProperty().get()).isEqualTo(session.textProperty().get());
        assertThat(after.unsavedProperty().get()).isTrue();
        assertThat(after.fileProperty().get().orElseThrow().getFileName()).isEqualTo(DEMO.getFileName());
        desk.dropDraft();
        assertThat(desk.draft()).isEmpty();
        Files.writeString(folder.resolve("desk").resolve("draft.json"), "{ broken");
        assertThat(desk.draft()).isEmpty();
    }

    @Test
    void recentFilesComeBackLastFirst() throws Exception {
        DeskFolder desk = new DeskFolder(folder.resolve("desk"));
        for (String name : new String[] {"a", "b", "c", "a"}) {
            Path file = folder.resolve(name + ".json");
            Files.writeString(file, "{}");
            desk.opened(file);
        }
        assertThat(desk.recent()).extracting(path -> path.getFileName().toString()).containsExactly("a.json", "c.json", "b.json");
        Files.delete(folder.resolve("c.json"));
        assertThat(desk.recent()).hasSize(2);
    }
}
