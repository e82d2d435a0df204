package org.capwright.desk.session;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import org.capwright.fitup.Advice;
import org.capwright.fitup.FitUp;
import org.capwright.fitup.ReadingSheet;
import org.capwright.fitup.SheetLine;
import org.capwright.job.CapJob;
import org.capwright.job.JobText;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;

/** The fit-up of the job that is open: its readings, and what comes of them. Fitted anew after each reading while it is watched. */
public final class FitDesk {
    private final Session session;
    private final Latest latest;
    private final ReadOnlyObjectWrapper<List<SheetLine>> lines = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Fitted> fitted = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
    private final BooleanProperty watched = new SimpleBooleanProperty();

    /**
     * A fit and what to do about it.
     *
     * @param fitUp what was made
     * @param advice what to do
     */
    public record Fitted(FitUp fitUp, Advice advice) {
        /** Fits a job. */
        static Fitted of(CapJob job) {
            FitUp fitUp = FitUp.of(job);
            return new Fitted(fitUp, Advice.of(fitUp));
        }
    }

    /**
     * The fit-up of a session.
     *
     * @param session what is open
     * @param latest who fits
     */
    public FitDesk(Session session, Latest latest) {
        this.session = session;
        this.latest = latest;
        session.solvedProperty().addListener((o, was, is) -> solved(is));
        watched.addListener((o, was, is) -> solved(session.solvedProperty().get()));
    }

    private void solved(Solved solved) {
        if (!watched.get()) {
            return;
        }
        lines.set(solved == null ? List.of() : ReadingSheet.of(solved.cap()));
        if (measured()) {
            latest.ask(overtaken -> Fitted.of(solved.cap().job()), this::take, this::refused);
        } else {
            latest.drop();
            fitted.set(null);
            refusal.set("");
        }
    }

    private void take(Fitted answer) {
        refusal.set("");
        fitted.set(answer);
    }

    private void refused(RuntimeException e) {
        if (!(e instanceof RefusedJobException refused)) {
            throw e;
        }
        fitted.set(null);
        refusal.set(String.join("\n", refused.problems().stream().map(Problem::message).toList()));
    }

    /**
     * Whether anything has been measured.
     *
     * @return true if so
     */
    public boolean measured() {
        return lines.get().stream().anyMatch(line -> !line.typed().isEmpty());
    }

    /**
     * Types a reading; nothing typed takes it out.
     *
     * @param line which
     * @param text what was measured
     */
    public void type(SheetLine line, String text) {
        JobText now = session.textProperty().get();
        session.edit(text.isBlank() ? now.without(line.path()) : line.type(now, text.strip()), line.path());
    }

    /**
     * Why a reading is refused.
     *
     * @param path where it is typed
     * @return the reason and the remedy; empty where it is not
     */
    public Optional<String> refused(String path) {
        return session.problemsProperty().get().stream().filter(problem -> problem.path().equals(path)).findFirst()
                .map(problem -> problem.reason() + ". " + problem.remedy() + ".");
    }

    /**
     * The readings to take, in the order of the walk round the cap.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<List<SheetLine>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    /**
     * What comes of the readings; null while there are none.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<Fitted> fittedProperty() {
        return fitted.getReadOnlyProperty();
    }

    /**
     * Why no such cap can have been made; empty where there is no reason.
     *
     * @return the property
     */
    public ReadOnlyStringProperty refusalProperty() {
        return refusal.getReadOnlyProperty();
    }

    /**
     * Whether anybody looks; nothing is fitted while nobody does.
     *
     * @return the property
     */
    public BooleanProperty watchedProperty() {
        return watched;
    }
}
