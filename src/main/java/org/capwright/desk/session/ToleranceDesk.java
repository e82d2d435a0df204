package org.capwright.desk.session;

import java.util.Optional;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.part.Cap;

/** Draws builds of the cap that is open, before anything is cut. What was drawn of another cap is put away. */
public final class ToleranceDesk {
    private static final double IDLE = -1;

    private final Session session;
    private final Latest latest;
    private final ReadOnlyObjectWrapper<ToleranceRun> run = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(IDLE);

    /**
     * The runs of a session.
     *
     * @param session what is open
     * @param latest who draws
     */
    public ToleranceDesk(Session session, Latest latest) {
        this.session = session;
        this.latest = latest;
        session.solvedProperty().addListener((o, was, is) -> {
            stop();
            run.set(null);
        });
    }

    /**
     * Draws builds; a run that is under way ends.
     *
     * @param builds how many, from {@link ToleranceRun#FEWEST} to {@link ToleranceRun#MOST}
     * @param seed the same seed gives the same result
     */
    public void start(int builds, long seed) {
        Solved solved = session.solvedProperty().get();
        if (solved == null) {
            return;
        }
        Cap cap = solved.cap();
        progress.set(0);
        latest.ask(overtaken -> ToleranceRun.of(cap, builds, seed, share -> {
            latest.tell(overtaken, () -> progress.set(share));
            return !overtaken.getAsBoolean();
        }), this::take, e -> {
            progress.set(IDLE);
            throw e;
        });
    }

    private void take(Optional<ToleranceRun> result) {
        progress.set(IDLE);
        result.ifPresent(run::set);
    }

    /** Ends the run that is under way, if any. */
    public void stop() {
        latest.drop();
        progress.set(IDLE);
    }

    /**
     * The last run of this cap; null where there was none.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<ToleranceRun> runProperty() {
        return run.getReadOnlyProperty();
    }

    /**
     * How far the run has come, 0 to 1; negative while none is under way.
     *
     * @return the property
     */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }
}
