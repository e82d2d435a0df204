package org.capwright.desk.task;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.concurrent.Task;
import org.capwright.desk.session.Solved;
import org.capwright.export.CutFiles;
import org.capwright.export.pdf.Paper;
import org.capwright.store.JobFiles;
import org.capwright.store.StagedFolder;

/** Writes everything that a shop needs into a folder, wholly or not at all; cancelled, it leaves nothing. */
public final class ExportTask extends Task<List<Path>> {
    private final Solved solved;
    private final Path folder;
    private final Paper paper;
    private final boolean whole;

    /**
     * The task.
     *
     * @param solved the cap
     * @param folder where to write
     * @param paper the paper to print on
     * @param whole whether long parts are drawn at true size as a whole too
     */
    public ExportTask(Solved solved, Path folder, Paper paper, boolean whole) {
        this.solved = solved;
        this.folder = folder;
        this.paper = paper;
        this.whole = whole;
    }

    @Override
    protected List<Path> call() {
        updateMessage("Writing cut list, templates and patterns");
        return StagedFolder.fill(folder, staging -> {
            JobFiles.write(staging.resolve("job.json"), solved.cap().job().text());
            CutFiles.write(staging, solved.cap(), solved.checks(), paper, whole, solved.stamp());
            if (isCancelled()) {
                throw new IOException("cancelled");
            }
        });
    }
}
