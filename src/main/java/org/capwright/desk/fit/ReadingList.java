package org.capwright.desk.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import org.capwright.desk.session.FitDesk;
import org.capwright.desk.session.FitDesk.Fitted;
import org.capwright.desk.session.Session;
import org.capwright.desk.widget.WordColumn;
import org.capwright.fitup.Residual;
import org.capwright.fitup.SheetLine;

/** All readings, in the order in which a lead hand walks round the cap. */
final class ReadingList extends BorderPane {
    /** Keeps the next reading in sight. */
    private static final double AHEAD_PX = 90;

    private final Session session;
    private final FitDesk desk;
    private final WordColumn column = new WordColumn(4);
    private final List<ReadingRow> rows = new ArrayList<>();
    private final ReadOnlyObjectWrapper<SheetLine> current = new ReadOnlyObjectWrapper<>();

    ReadingList(Session session, FitDesk desk) {
        this.session = session;
        this.desk = desk;
        column.setId("readings");
        setCenter(column);
        desk.linesProperty().addListener((o, was, is) -> show());
        desk.fittedProperty().addListener((o, was, is) -> show());
        session.problemsProperty().addListener((o, was, is) -> show());
        show();
    }

    /** The reading that has the focus, null before any had it. */
    ReadOnlyObjectProperty<SheetLine> currentProperty() {
        return current.getReadOnlyProperty();
    }

    private void show() {
        List<SheetLine> lines = desk.linesProperty().get();
        if (session.solvedProperty().get() == null) {
            return;
        }
        // a reading that is typed may get another place in its list; what it says stays
        if (!rows.stream().map(row -> row.line().words()).toList().equals(lines.stream().map(SheetLine::words).toList())) {
            build(lines);
        }
        for (int i = 0; i < lines.size(); i++) {
            SheetLine line = lines.get(i);
            rows.get(i).show(line, session.solvedProperty().get().format(), residual(line.path()));
        }
    }

    private Optional<Residual> residual(String path) {
        Fitted fitted = desk.fittedProperty().get();
        return fitted == null ? Optional.empty() : Stream.of(fitted.fitUp().stack(), fitted.fitUp().sleeve(),
                fitted.fitUp().hood())
                .flatMap(fit -> fit.residuals().stream()).filter(one -> one.reading().path().equals(path)).findFirst();
    }

    private void build(List<SheetLine> lines) {
        rows.clear();
        column.clear();
        String section = "";
        for (SheetLine line : lines) {
            if (!line.section().equals(section)) {
                section = line.section();
                column.title(section.toUpperCase(Locale.ROOT));
            }
            ReadingRow row = new ReadingRow(desk, line);
            int index = rows.size();
            row.field().addEventFilter(KeyEvent.KEY_PRESSED, event -> {
                int step = ReadingRow.step(event);
                if (step != 0) {
                    go(index + step);
                    event.consume();
                }
            });
            row.field().focusedProperty().addListener((o, was, is) -> focus(row, is));
            rows.add(row);
            column.add(row);
        }
    }

    private void focus(ReadingRow row, boolean here) {
        if (here) {
            current.set(row.line());
        } else {
            session.seal();
        }
    }

    private void go(int index) {
        if (index >= 0 && index < rows.size()) {
            rows.get(index).field().requestFocus();
            rows.get(index).field().selectAll();
            column.reveal(rows.get(index), AHEAD_PX / 2, AHEAD_PX);
        }
    }

    /** Puts the focus on the first reading that is still to be taken. */
    void begin() {
        rows.stream().filter(row -> row.line().typed().isEmpty()).findFirst().or(() -> rows.stream().findFirst())
                .ifPresent(row -> go(rows.indexOf(row)));
    }
}
