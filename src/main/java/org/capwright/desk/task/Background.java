package org.capwright.desk.task;

import java.util.function.Consumer;
import javafx.concurrent.Task;

/** Starts tasks on threads of their own that don't keep the program alive. */
public final class Background {
    private Background() {
    }

    /**
     * Runs a task.
     *
     * @param task the task
     * @param done what to do with its result, on the screen's thread
     * @param failed what to do with what it threw, on the screen's thread
     * @param <T> type of the result
     */
    public static <T> void run(Task<T> task, Consumer<T> done, Consumer<Throwable> failed) {
        task.setOnSucceeded(event -> done.accept(task.getValue()));
        task.setOnFailed(event -> failed.accept(task.getException()));
        Thread thread = new Thread(task, "capwright-" + task.getClass().getSimpleName());
        thread.setDaemon(true);
        thread.start();
    }
}
