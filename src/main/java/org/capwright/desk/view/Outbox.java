package org.capwright.desk.view;

import java.io.File;
import java.nio.file.Path;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;
import javafx.stage.DirectoryChooser;
import javafx.stage.Window;
import org.capwright.desk.task.Background;
import org.capwright.desk.task.FolderTask;
import org.capwright.store.StagedFolder;

/** Writes some files into a folder that the person chooses, in the background, and says so. */
final class Outbox {
    private Outbox() {
    }

    static void write(Window owner, String title, StagedFolder.Writing writing) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        File folder = chooser.showDialog(owner);
        if (folder != null) {
            write(owner, folder.toPath(), writing);
        }
    }

    private static void write(Window owner, Path folder, StagedFolder.Writing writing) {
        Background.run(new FolderTask(folder, writing), files -> {
            say(owner, Alert.AlertType.INFORMATION, files.size() + (files.size() == 1 ? " file" : " files") + " written into "
                    + folder + ".");
            FolderOpener.open(folder);
        }, problem -> say(owner, Alert.AlertType.WARNING, problem.getMessage()));
    }

    private static void say(Window owner, Alert.AlertType type, String text) {
        Alert alert = new Alert(type, text, ButtonType.OK);
        alert.setHeaderText(null);
        alert.initOwner(owner);
        alert.show();
    }
}
