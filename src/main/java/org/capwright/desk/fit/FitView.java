package org.capwright.desk.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.capwright.desk.session.FitDesk;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.session.ToleranceDesk;
import org.capwright.desk.session.Watched;
import org.capwright.desk.sketch.FitSketch;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.Sketch;
import org.capwright.fitup.ReadingPlace;
import org.capwright.fitup.SheetLine;

/** Fit-up: the made cap by its readings, or, before cutting, many builds by their tolerances. */
public final class FitView extends BorderPane implements Watched {
    private static final double MOST_TIMES = 40;
    private static final double USUAL_TIMES = 10;

    private final Session session;
    private final FitDesk desk;
    private final ObjectProperty<Palette> palette;
    private final ReadingList readings;
    private final Sketch plan = new Sketch(this::paintPlan);
    private final Sketch section = new Sketch(this::paintSection);
    private final Slider times = new Slider(1, MOST_TIMES, USUAL_TIMES);
    private final Label timesWords = new Label();

    /**
     * The view.
     *
     * @param session what is open
     * @param desk its fit-up
     * @param tolerance its tolerance runs
     * @param palette the colours
     * @param sheet writes the reading sheet
     */
    public FitView(Session session, FitDesk desk, ToleranceDesk tolerance, ObjectProperty<Palette> palette, Runnable sheet) {
        this.session = session;
        this.desk = desk;
        this.palette = palette;
        this.readings = new ReadingList(session, desk);
        BorderPane made = made();
        TolerancePane before = new TolerancePane(session, tolerance, palette);
        ToggleButton afterButton = new ToggleButton("What was made");
        ToggleButton beforeButton = new ToggleButton("Before cutting");
        afterButton.setId("fit-made");
        beforeButton.setId("fit-before");
        ToggleGroup group = new ToggleGroup();
        group.getToggles().setAll(afterButton, beforeButton);
        afterButton.setSelected(true);
        setCenter(made);
        group.selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null) {
                was.setSelected(true);
            } else {
                setCenter(is == beforeButton ? before : made);
            }
        });
        Button print = new Button("Reading sheet...");
        print.setId("reading-sheet");
        print.setOnAction(event -> sheet.run());
        setTop(bar(afterButton, beforeButton, print));
        listen();
        repaint();
    }

    private static HBox bar(Node... nodes) {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox bar = new HBox(6, nodes[0], nodes[1], gap, nodes[2]);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("view-bar");
        return bar;
    }

    private void listen() {
        readings.currentProperty().addListener((o, was, is) -> repaint());
        desk.fittedProperty().addListener((o, was, is) -> {
            if (was == null && is != null) {
                times.setValue(FitSketch.usualTimes(is.fitUp().drawn(), is));
            }
            repaint();
        });
        session.solvedProperty().addListener((o, was, is) -> repaint());
        palette.addListener((o, was, is) -> repaint());
        times.valueProperty().addListener((o, was, is) -> repaint());
    }

    private BorderPane made() {
        plan.setAccessibleText("Plan: where to measure, and the measured outlines");
        section.setAccessibleText("Section: where to measure heights");
        section.setPrefHeight(90);
        section.setMinHeight(60);
        SplitPane drawings = new SplitPane(plan, section);
        drawings.setOrientation(Orientation.VERTICAL);
        drawings.setDividerPositions(0.76);
        BorderPane picture = new BorderPane(drawings);
        picture.setBottom(enlargement());
        readings.setPrefWidth(250);
        readings.setMinWidth(200);
        SplitPane across = new SplitPane(readings, picture);
        across.setDividerPositions(0.4);
        SplitPane.setResizableWithParent(readings, false);
        SplitPane all = new SplitPane(across, new AdvicePane(session, desk));
        all.setOrientation(Orientation.VERTICAL);
        all.setDividerPositions(0.74);
        BorderPane made = new BorderPane(all);
        made.setTop(new VerdictBand(session, desk));
        return made;
    }

    private HBox enlargement() {
        times.setAccessibleText("How many times departures are enlarged");
        HBox.setHgrow(times, Priority.ALWAYS);
        timesWords.setMinWidth(Region.USE_PREF_SIZE);
        HBox bar = new HBox(8, timesWords, times);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("view-bar");
        return bar;
    }

    /** Comes in sight with the focus on the first reading that is still to be taken. */
    @Override
    public void setWatched(boolean now) {
        desk.watchedProperty().set(now);
        if (now) {
            // what is not laid out yet can't take the focus
            Platform.runLater(() -> afterLayout(readings::begin));
        }
    }

    private void repaint() {
        timesWords.setText(String.format(Locale.ROOT, "departures shown %.0f times", times.getValue()));
        plan.repaint();
        section.repaint();
    }

    private void paintPlan() {
        Solved solved = session.solvedProperty().get();
        if (solved != null) {
            FitSketch.plan(plan, solved.cap(), Optional.ofNullable(desk.fittedProperty().get()), palette.get(), times.getValue(),
                    places(solved));
        }
    }

    private void paintSection() {
        Solved solved = session.solvedProperty().get();
        if (solved != null) {
            FitSketch.section(section, solved.cap(), palette.get(), places(solved));
        }
    }

    /** Where the reading with the focus is taken. */
    private List<ReadingPlace> places(Solved solved) {
        SheetLine line = readings.currentProperty().get();
        return line == null ? List.of() : ReadingPlace.of(line, solved.cap());
    }

    private void afterLayout(Runnable then) {
        if (getScene() == null) {
            return;
        }
        getScene().addPostLayoutPulseListener(new Runnable() {
            @Override
            public void run() {
                getScene().removePostLayoutPulseListener(this);
                then.run();
            }
        });
        Platform.requestNextPulse();
    }
}
