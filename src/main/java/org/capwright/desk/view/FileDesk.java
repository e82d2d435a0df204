package org.capwright.desk.view;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.capwright.desk.session.Session;
import org.capwright.job.JobText;
import org.capwright.job.StackInputs;
import org.capwright.store.DeskFolder;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;

/** New, open, save: asks before work is lost, and says what went wrong. */
final class FileDesk {
    private static final FileChooser.ExtensionFilter JOBS = new FileChooser.ExtensionFilter("Capwright jobs", "*.json");

    private final Session session;
    private final DeskFolder folder;
    private Window window;

    FileDesk(Session session, DeskFolder folder) {
        this.session = session;
        this.folder = folder;
    }

    void setWindow(Window owner) {
        window = owner;
    }

    List<Path> recent() {
        return folder.recent();
    }

    void fresh() {
        if (mayLeave()) {
            session.begin(JobText.of(Map.of(StackInputs.OUTSIDE_DIAMETER.path(), "18 in")));
        }
    }

    void open() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(JOBS);
        File file = chooser.showOpenDialog(window);
        if (file != null) {
            open(file.toPath());
        }
    }

    void open(Path path) {
        if (!mayLeave()) {
            return;
        }
        try {
            session.open(path);
            folder.opened(path);
        } catch (StoreException | UnreadableJobException e) {
            tell(e.getMessage());
        }
    }

    boolean save() {
        return session.fileProperty().get().map(this::saveTo).orElseGet(this::saveAs);
    }

    boolean saveAs() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(JOBS);
        chooser.setInitialFileName("cap.json");
        File file = chooser.showSaveDialog(window);
        return file != null && saveTo(file.toPath());
    }

    private boolean saveTo(Path path) {
        try {
            session.save(path);
            folder.opened(path);
            folder.dropDraft();
            return true;
        } catch (StoreException e) {
            tell(e.getMessage());
            return false;
        }
    }

    /** Whether what is open may be left: saved, or given up by the person. */
    boolean mayLeave() {
        if (!session.unsavedProperty().get()) {
            return true;
        }
        ButtonType save = new ButtonType("Save", ButtonBar.ButtonData.YES);
        ButtonType leave = new ButtonType("Don't save", ButtonBar.ButtonData.NO);
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, "What you typed is not saved.", save, leave, ButtonType.CANCEL);
        alert.setHeaderText(null);
        alert.initOwner(window);
        Optional<ButtonType> answer = alert.showAndWait();
        if (answer.isPresent() && answer.get() == save) {
            return save();
        }
        if (answer.isPresent() && answer.get() == leave) {
            folder.dropDraft();
            return true;
        }
        return false;
    }

    void tell(String text) {
        Alert alert = new Alert(Alert.AlertType.WARNING, text, ButtonType.OK);
        alert.setHeaderText(null);
        alert.initOwner(window);
        alert.showAndWait();
    }
}
