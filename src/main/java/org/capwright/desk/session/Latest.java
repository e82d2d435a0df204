package org.capwright.desk.session;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Answers the newest of many requests off the screen's thread. A request that a newer one overtakes is told so and its answer is
 * dropped, so that typing never waits and the screen never goes back in time.
 */
public final class Latest {
    private final Executor worker;
    private final Executor screen;
    private final AtomicLong newest = new AtomicLong();

    /**
     * Over given threads; for tests.
     *
     * @param worker where requests are answered, one at a time
     * @param screen where answers are taken
     */
    public Latest(Executor worker, Executor screen) {
        this.worker = worker;
        this.screen = screen;
    }

    /**
     * On a thread of its own that does not keep the program alive.
     *
     * @param name of the thread
     * @param screen where answers are taken
     * @return a new one
     */
    public static Latest onOwnThread(String name, Executor screen) {
        ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "capwright-" + name);
            thread.setDaemon(true);
            return thread;
        });
        return new Latest(worker, screen);
    }

    /**
     * Asks; earlier requests are overtaken.
     *
     * @param work answers; what it is given says whether it has been overtaken, and so may stop
     * @param answered takes the answer
     * @param failed takes what was thrown instead
     * @param <T> type of the answer
     */
    public <T> void ask(Function<BooleanSupplier, T> work, Consumer<T> answered, Consumer<RuntimeException> failed) {
        long mine = newest.incrementAndGet();
        BooleanSupplier overtaken = () -> newest.get() != mine;
        worker.execute(() -> {
            if (overtaken.getAsBoolean()) {
                return;
            }
            try {
                T answer = work.apply(overtaken);
                tell(overtaken, () -> answered.accept(answer));
            } catch (RuntimeException e) {
                tell(overtaken, () -> failed.accept(e));
            }
        });
    }

    /**
     * Tells the screen something before the answer is there, unless the request has been overtaken.
     *
     * @param overtaken what the work was given
     * @param news what to do on the screen's thread
     */
    public void tell(BooleanSupplier overtaken, Runnable news) {
        screen.execute(() -> {
            if (!overtaken.getAsBoolean()) {
                news.run();
            }
        });
    }

    /** Overtakes whatever is asked; nobody wants its answer any more. */
    public void drop() {
        newest.incrementAndGet();
    }
}
