package org.capwright.desk.task;

import java.nio.file.Path;
import java.util.List;
import javafx.concurrent.Task;
import org.capwright.store.StagedFolder;

/** Writes some files into a folder, wholly or not at all. */
public final class FolderTask extends Task<List<Path>> {
    private final Path folder;
    private final StagedFolder.Writing filling;

    /**
     * The task.
     *
     * @param folder where to write
     * @param filling what to write
     */
    public FolderTask(Path folder, StagedFolder.Writing filling) {
        this.folder = folder;
        this.filling = filling;
    }

    @Override
    protected List<Path> call() {
        return StagedFolder.fill(folder, filling);
    }
}
