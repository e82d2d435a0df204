package org.capwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Application;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.stage.Stage;
import org.capwright.desk.session.Session;
import org.capwright.desk.view.Workbench;
import org.capwright.job.JobText;
import org.capwright.store.DeskFolder;

/** The window as a program; offers what a crash left. */
public final class WindowProgram extends Application {
    /** Under way before the screen is: the toolkit makes the program itself, so this can't be handed to it. */
    private static CompletableFuture<Opening> opening;

    /**
     * Opens the window and returns when it is closed.
     *
     * @param words a job file, or nothing
     */
    static void open(String... words) {
        opening = CompletableFuture.supplyAsync(() -> Opening.of(List.of(words)));
        launch(WindowProgram.class, words);
    }

    @Override
    public void start(Stage stage) {
        Opening opened = opening.join();
        new Workbench(opened.session(), opened.folder()).show(stage);
        opened.problem().ifPresent(text -> new Alert(Alert.AlertType.WARNING, text, ButtonType.OK).showAndWait());
        recover(opened.session(), opened.folder());
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
}
