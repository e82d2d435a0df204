package org.capwright.desk.task;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.concurrent.Task;
import org.capwright.desk.session.Solved;
import org.capwright.export.CutFiles;
import org.capwright.store.JobFiles;
import org.capwright.store.StagedFolder;

/** Writes everything that a shop needs into a folder, wholly or not at all; cancelled, it leaves nothing. */
public final class ExportTask extends Task<List<Path>> {
    private final Solved solved;
    private final Path folder;
    private final CutFiles.Choice choice;

    /**
     * The task.
     *
     * @param solved the cap
     * @param folder where to write
     * @param choice what to write, and how
     */
    public ExportTask(Solved solved, Path folder, CutFiles.Choice choice) {
        this.solved = solved;
        this.folder = folder;
        this.choice = choice;
    }

    @Override
    protected List<Path> call() {
        updateMessage("Writing");
        return StagedFolder.fill(folder, staging -> {
            JobFiles.write(staging.resolve("job.json"), solved.cap().job().text());
            CutFiles.write(staging, solved.cap(), solved.checks(), choice, solved.stamp());
            if (isCancelled()) {
                throw new IOException("cancelled");
            }
        });
    }
}
