package org.capwright.desk.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.capwright.job.JobText;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;

/**
 * A file of the shop's own (stock, rates) that is edited in the window: what is typed in it, right or wrong, its problems, and the
 * last good value. Every good edit is kept in the file at once; before the first one the sample holds.
 *
 * @param <T> type of the value
 */
public final class ShopFile<T> implements Undoable {
    private final Path file;
    private final Form<T> form;
    private final ReadOnlyObjectWrapper<JobText> text = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<T> value = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<List<Problem>> problems = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper sample = new ReadOnlyBooleanWrapper();
    private History<JobText> history;

    /**
     * How such a file is read and written.
     *
     * @param sample the sample that stands in for a file that is not there
     * @param read reads a value from texts; throws {@link RefusedJobException}
     * @param texts the texts of a value
     * @param load texts of a file; throws {@link StoreException} or {@link UnreadableJobException}
     * @param write writes a value into a file; throws {@link StoreException}
     * @param <T> type of the value
     */
    public record Form<T>(T sample, Function<JobText, T> read, Function<T, JobText> texts, Function<Path, JobText> load,
            BiConsumer<Path, T> write) {
    }

    /**
     * A file of the shop.
     *
     * @param file where it is kept
     * @param form how it is read and written
     */
    public ShopFile(Path file, Form<T> form) {
        this.file = file;
        this.form = form;
        value.set(form.sample());
        sample.set(true);
        begin(form.texts().apply(form.sample()));
        if (Files.exists(file)) {
            try {
                JobText typed = form.load().apply(file);
                value.set(form.read().apply(typed));
                sample.set(false);
                begin(typed);
            } catch (RefusedJobException e) {
                problems.set(e.problems());
            } catch (StoreException | UnreadableJobException e) {
                problems.set(List.of(new Problem(file.getFileName().toString(), "", e.getMessage(),
                        "Mend the file, or edit here to replace it")));
            }
        }
    }

    private void begin(JobText first) {
        history = new History<>(first);
        text.set(first);
    }

    /**
     * Takes another file's contents in place of these, as one edit.
     *
     * @param other the file
     * @throws StoreException if it can't be read
     * @throws UnreadableJobException if it is not well-formed
     * @throws RefusedJobException if it is refused; nothing has changed then
     */
    public void take(Path other) {
        JobText typed = form.load().apply(other);
        form.read().apply(typed);
        history.seal();
        go(typed, "");
    }

    /**
     * Types a text. Nothing typed takes it out.
     *
     * @param path where
     * @param typed what
     */
    public void type(String path, String typed) {
        go(typed.isBlank() ? text.get().without(path) : text.get().with(path, typed.strip()), path);
    }

    /**
     * Adds an element to a list.
     *
     * @param list the list
     * @param first what it holds at first, by name
     */
    public void add(String list, Map<String, String> first) {
        JobText next = text.get().without(list);
        int index = next.listSize(list);
        for (Map.Entry<String, String> one : first.entrySet()) {
            next = next.with(list + "[" + index + "]." + one.getKey(), one.getValue());
        }
        history.seal();
        go(next, "");
    }

    /**
     * Takes an element out of a list.
     *
     * @param list the list
     * @param index which, from 0
     */
    public void remove(String list, int index) {
        history.seal();
        go(text.get().withoutElement(list, index), "");
    }

    @Override
    public void undo() {
        history.undo().ifPresent(this::show);
    }

    @Override
    public void redo() {
        history.redo().ifPresent(this::show);
    }

    private void go(JobText next, String key) {
        history.go(next, key);
        show(next);
    }

    private void show(JobText next) {
        text.set(next);
        try {
            T read = form.read().apply(next);
            problems.set(List.of());
            keep(read);
            value.set(read);
        } catch (RefusedJobException e) {
            problems.set(e.problems());
        }
    }

    private void keep(T read) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            form.write().accept(file, read);
            sample.set(false);
        } catch (IOException | StoreException e) {
            problems.set(List.of(new Problem(file.toString(), "", "it could not be kept: " + e.getMessage(),
                    "Make room, or mend the folder's rights")));
        }
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
     * The last good value.
     *
     * @return the property, never null
     */
    public ReadOnlyObjectProperty<T> valueProperty() {
        return value.getReadOnlyProperty();
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
     * Whether it is still the sample.
     *
     * @return the property
     */
    public ReadOnlyBooleanProperty sampleProperty() {
        return sample.getReadOnlyProperty();
    }

    /**
     * Where it is kept.
     *
     * @return the file
     */
    public Path file() {
        return file;
    }
}
