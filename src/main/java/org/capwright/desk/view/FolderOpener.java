package org.capwright.desk.view;

import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;

/** Shows a folder where the machine can. */
final class FolderOpener {
    private FolderOpener() {
    }

    static void open(Path folder) {
        if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
            return;
        }
        Thread thread = new Thread(() -> {
            try {
                Desktop.getDesktop().open(folder.toFile());
            } catch (IOException e) {
                // the files are there all the same, and the dialog says where
                return;
            }
        }, "capwright-open");
        thread.setDaemon(true);
        thread.start();
    }
}
