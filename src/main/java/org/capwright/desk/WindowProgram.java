package org.capwright.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.stage.Stage;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Shop;
import org.capwright.desk.view.Workbench;
import org.capwright.job.JobText;
import org.capwright.store.DeskFolder;
import org.capwright.store.JobFiles;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;

/** The window as a program: opens the given job, else the last one, the first time a demo; offers what a crash left. */
public final class WindowProgram extends Application {
    private static final String DEMO = "/org/capwright/desk/kiln-room.json";

    @Override
    public void start(Stage stage) throws IOException {
        DeskFolder folder = DeskFolder.ofUser();
        Session session = new Session(demo(), Shop.of(folder));
        List<String> words = getParameters().getRaw();
        Optional<Path> last = Optional.ofNullable(folder.settings().get("last")).map(Path::of).filter(Files::exists);
        Optional<Path> wanted = words.isEmpty() ? last : Optional.of(Path.of(words.get(0)));
        Optional<String> problem = wanted.flatMap(path -> open(session, folder, path));
        new Workbench(session, folder).show(stage);
        problem.ifPresent(text -> new Alert(Alert.AlertType.WARNING, text, ButtonType.OK).showAndWait());
        recover(session, folder);
    }

    private static Optional<String> open(Session session, DeskFolder folder, Path path) {
        try {
            session.open(path);
            folder.opened(path);
            return Optional.empty();
        } catch (StoreException | UnreadableJobException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static void recover(Session session, DeskFolder folder) {
        Optional<JobText> draft = folder.draft();
        if (draft.isEmpty() || draft.get().equals(session.textProperty().get())) {
            return;
        }
        ButtonType recover = new ButtonType("Recover");
        ButtonType drop = new ButtonType("Throw away");
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, "The program ended without saving. What you had typed is still here.", recover, drop);
        alert.setHeaderText(null);
        if (alert.showAndWait().filter(answer -> answer == recover).isPresent()) {
            session.recover(draft.get(), folder.draftOf());
        } else {
            folder.dropDraft();
        }
    }

    /** The demo lies inside the program, so that the window always has something to show. */
    private static JobText demo() throws IOException {
        Path file = Files.createTempFile("capwright-demo", ".json");
        try (InputStream stream = WindowProgram.class.getResourceAsStream(DEMO)) {
            Files.write(file, stream.readAllBytes());
            return JobFiles.read(file);
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
