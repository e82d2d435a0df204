package org.capwright.desk.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.capwright.job.Input;
import org.capwright.job.JobReader;
import org.capwright.job.JobReading;
import org.capwright.job.JobText;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.store.JobFiles;

/**
 * The job that is open: what was typed, right or wrong, the problems in it, and the last good cap. Every edit can be undone.
 */
public final class Session implements Undoable {
    private final Shop shop;
    private final ReadOnlyObjectWrapper<JobText> text;
    private final ReadOnlyObjectWrapper<List<Problem>> problems = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Solved> solved = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Optional<Path>> file = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
    private History<JobText> history;
    private JobText saved;

    /**
     * A session on a job that has no file yet.
     *
     * @param first what is typed in it
     * @param shop whose stock the blanks are to be cut from
     */
    public Session(JobText first, Shop shop) {
        this.shop = shop;
        text = new ReadOnlyObjectWrapper<>(first);
        begin(first, Optional.empty());
        shop.stock().valueProperty().addListener((o, was, is) -> show(text.get()));
    }

    /**
     * Opens a job file in place of what is open.
     *
     * @param path the file
     * @throws org.capwright.store.StoreException if it can't be read
     * @throws org.capwright.store.UnreadableJobException if it is not well-formed
     */
    public void open(Path path) {
        begin(JobFiles.read(path), Optional.of(path));
    }

    /**
     * Begins anew with a job that has no file yet.
     *
     * @param first what is typed in it
     */
    public void begin(JobText first) {
        begin(first, Optional.empty());
    }

    /**
     * Begins with what was saved from a crash: unsaved, and of the file it came from.
     *
     * @param draft what was typed
     * @param path the file it came from, if any
     */
    public void recover(JobText draft, Optional<Path> path) {
        begin(draft, path);
        saved = JobText.of(Map.of());
        unsaved.set(true);
    }

    private void begin(JobText first, Optional<Path> path) {
        history = new History<>(first);
        saved = first;
        file.set(path);
        solved.set(null);
        show(first);
    }

    /**
     * Types a text. Nothing typed leaves the input out of the job.
     *
     * @param input where
     * @param typed what
     */
    public void type(Input<?> input, String typed) {
        JobText now = text.get();
        edit(typed.isBlank() ? now.without(input.path()) : now.with(input.path(), typed.strip()), input.path());
    }

    /**
     * Goes on to another text; edits in a row with the same key count as one until {@link #seal}.
     *
     * @param next the new text
     * @param key what is being edited
     */
    public void edit(JobText next, String key) {
        history.go(next, key);
        show(next);
    }

    /**
     * Types several texts as one edit, such as a remedy's.
     *
     * @param typed texts by path
     */
    public void type(Map<String, String> typed) {
        JobText next = text.get();
        for (Map.Entry<String, String> one : typed.entrySet()) {
            next = next.with(one.getKey(), one.getValue());
        }
        history.seal();
        history.go(next, "");
        show(next);
    }

    /**
     * Replaces all that is typed as one edit.
     *
     * @param next the new text
     */
    public void replace(JobText next) {
        history.seal();
        history.go(next, "");
        show(next);
    }

    /** What comes next is an edit of its own. */
    public void seal() {
        history.seal();
    }

    @Override
    public void undo() {
        history.undo().ifPresent(this::show);
    }

    @Override
    public void redo() {
        history.redo().ifPresent(this::show);
    }

    /**
     * Whether there is anything to undo.
     *
     * @return true if so
     */
    public boolean canUndo() {
        return history.canUndo();
    }

    /**
     * Whether there is anything to redo.
     *
     * @return true if so
     */
    public boolean canRedo() {
        return history.canRedo();
    }

    /**
     * Saves the job.
     *
     * @param path the file to save to; the job belongs to it from now on
     * @throws org.capwright.store.StoreException if it can't be written; nothing has changed then
     */
    public void save(Path path) {
        JobFiles.write(path, text.get());
        saved = text.get();
        file.set(Optional.of(path));
        unsaved.set(false);
    }

    private void show(JobText next) {
        unsaved.set(!next.equals(saved));
        JobReading reading = JobReader.read(next);
        problems.set(reading.problems());
        reading.job().ifPresent(job -> {
            try {
                solved.set(Solved.of(job, shop.ownStock()));
            } catch (RefusedJobException e) {
                problems.set(e.problems());
            }
        });
        text.set(next);
    }

    /**
     * The shop.
     *
     * @return its stock and rates
     */
    public Shop shop() {
        return shop;
    }

    /**
     * What is typed.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<JobText> textProperty() {
        return text.getReadOnlyProperty();
    }

    /**
     * What is wrong with it.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<List<Problem>> problemsProperty() {
        return problems.getReadOnlyProperty();
    }

    /**
     * The last good cap; null where there was none since the job was opened.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<Solved> solvedProperty() {
        return solved.getReadOnlyProperty();
    }

    /**
     * The file that the job belongs to.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<Optional<Path>> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /**
     * Whether there is anything to lose.
     *
     * @return the property
     */
    public ReadOnlyBooleanProperty unsavedProperty() {
        return unsaved.getReadOnlyProperty();
    }
}
