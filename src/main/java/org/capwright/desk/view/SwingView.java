package org.capwright.desk.view;

import java.util.Locale;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.SplitPane;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.paint.Color;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.sketch.ClearancePlot;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.PlanSketch;
import org.capwright.desk.sketch.SectionDimensions;
import org.capwright.desk.sketch.SectionSketch;
import org.capwright.desk.sketch.Sketch;
import org.capwright.geom.Vec2;

/** Section, plan and plot at one opening, which a slider moves and a button plays. */
final class SwingView extends BorderPane {
    private static final double SECONDS_A_SWING = 4;

    private final Session session;
    private final Attention attention;
    private final ObjectProperty<Palette> palette;
    private final Sketch section = new Sketch(this::paintSection, this::moveSection);
    private final Sketch plan = new Sketch(this::paintPlan, this::movePlan);
    private final Sketch plot = new Sketch(this::paintPlot, this::movePlot);
    private final ClearancePlot curves;
    private final Slider slider = new Slider(0, 90, 0);
    private final Label degrees = new Label();
    private final Button play = new Button("Play");
    private final AnimationTimer timer = new AnimationTimer() {
        private long started;

        @Override
        public void start() {
            started = System.nanoTime();
            super.start();
        }

        @Override
        public void handle(long now) {
            double turns = (now - started) / 1e9 / SECONDS_A_SWING;
            if (turns >= 1) {
                stopPlaying();
            } else if (session.solvedProperty().get() != null) {
                double stop = session.solvedProperty().get().cap().stopRad();
                attention.openRadProperty().set(stop * (1 - Math.cos(2 * Math.PI * turns)) / 2);
            }
        }
    };
    private final FrameLog frames = new FrameLog();
    private boolean playing;

    SwingView(Session session, Attention attention, ObjectProperty<Palette> palette) {
        this.session = session;
        this.attention = attention;
        this.palette = palette;
        this.curves = new ClearancePlot(plot, attention);
        SplitPane drawings = new SplitPane(section, plan);
        drawings.setDividerPositions(0.62);
        SplitPane all = new SplitPane(drawings, plot);
        all.setOrientation(Orientation.VERTICAL);
        all.setDividerPositions(0.68);
        setCenter(all);
        setBottom(controls());
        section.setId("section");
        section.setAccessibleText("Section across the rods");
        plan.setAccessibleText("Plan from above");
        plot.setAccessibleText("Least clearance against opening");
        section.addEventHandler(MouseEvent.MOUSE_CLICKED, event -> pick(event.getX(), event.getY()));
        session.solvedProperty().addListener((o, was, is) -> {
            show();
            newFoul(was, is);
        });
        attention.openRadProperty().addListener((o, was, is) -> move());
        attention.inputPathProperty().addListener((o, was, is) -> section.repaint());
        attention.checkProperty().addListener((o, was, is) -> {
            paint();
            pulse(Optional.ofNullable(is));
        });
        palette.addListener((o, was, is) -> paint());
        show();
    }

    /** A foul that was not there before draws the eye to where it is. */
    private void newFoul(Solved was, Solved is) {
        if (is != null) {
            pulse(is.worstPlace().filter(check -> check.verdict() == Verdict.FOUL).filter(check -> was == null
                    || was.checks().stream()
                    .noneMatch(one -> one.id().equals(check.id()) && one.verdict() == Verdict.FOUL)));
        }
    }

    private void pulse(Optional<Check> check) {
        check.flatMap(Check::place).ifPresent(place -> {
            Color color = check.get().verdict() == Verdict.FOUL ? palette.get().trouble() : palette.get().accent();
            section.pulse(new Vec2(place.at().x(), place.at().z()), color);
            plan.pulse(new Vec2(place.at().x(), place.at().y()), color);
        });
    }

    /** The check whose place is marked: the chosen one, else the worst. */
    private Check marked(Solved solved) {
        return attention.checkProperty().get() != null ? attention.checkProperty().get() : solved.worstPlace().orElse(null);
    }

    private HBox controls() {
        slider.setId("opening");
        slider.setAccessibleText("Opening of the leaves, degrees");
        slider.setBlockIncrement(1);
        slider.valueProperty().addListener((o, was, is) -> attention.openRadProperty().set(Math.toRadians(is.doubleValue())));
        play.setId("play");
        play.setOnAction(event -> playOrStop());
        degrees.setMinWidth(70);
        HBox.setHgrow(slider, Priority.ALWAYS);
        HBox controls = new HBox(10, new Label("opening"), slider, degrees, play);
        controls.setAlignment(Pos.CENTER_LEFT);
        controls.getStyleClass().add("foot");
        return controls;
    }

    void playOrStop() {
        if (playing) {
            stopPlaying();
        } else {
            playing = true;
            play.setText("Stop");
            timer.start();
        }
    }

    private void stopPlaying() {
        playing = false;
        play.setText("Play");
        timer.stop();
    }

    /** A dimension that is clicked puts the focus on its input. */
    private void pick(double px, double py) {
        Solved solved = session.solvedProperty().get();
        if (solved == null) {
            return;
        }
        for (SectionDimensions.Dimension d : SectionDimensions.of(solved.cap())) {
            boolean near = d.upright()
                    ? Math.abs(px - SectionDimensions.uprightX(section, d)) < 9
                    && between(py, section.y(d.toMm()), section.y(d.fromMm()))
                    : Math.abs(py - SectionDimensions.lyingY(section, d)) < 9
                    && between(px, section.x(d.fromMm()), section.x(d.toMm()));
            if (near) {
                attention.inputPathProperty().set(d.path());
                return;
            }
        }
    }

    private static boolean between(double value, double from, double to) {
        return value >= from - 3 && value <= to + 3;
    }

    private void show() {
        Solved solved = session.solvedProperty().get();
        if (solved != null) {
            slider.setMax(Math.toDegrees(solved.cap().stopRad()));
            attention.openRadProperty().set(Math.min(attention.openRadProperty().get(), solved.cap().stopRad()));
        }
        tell();
        paint();
    }

    private void tell() {
        double open = Math.toDegrees(attention.openRadProperty().get());
        if (Math.abs(slider.getValue() - open) > 1e-6) {
            slider.setValue(open);
        }
        degrees.setText(String.format(Locale.ROOT, "%.1f deg", open));
    }

    private void move() {
        tell();
        long began = System.nanoTime();
        section.move();
        plan.move();
        plot.move();
        frames.painted(System.nanoTime() - began);
    }

    private void paint() {
        section.repaint();
        plan.repaint();
        plot.repaint();
    }

    private Optional<Solved> solved() {
        return Optional.ofNullable(session.solvedProperty().get());
    }

    private double openRad() {
        return attention.openRadProperty().get();
    }

    private void paintSection() {
        solved().ifPresent(now -> SectionSketch.still(section, now, palette.get(), attention.inputPathProperty().get()));
    }

    private void moveSection() {
        solved().ifPresent(now -> SectionSketch.moving(section, now, palette.get(), openRad(), marked(now)));
    }

    private void paintPlan() {
        solved().ifPresent(now -> PlanSketch.still(plan, now, palette.get()));
    }

    private void movePlan() {
        solved().ifPresent(now -> PlanSketch.moving(plan, now, palette.get(), openRad(), marked(now)));
    }

    private void paintPlot() {
        solved().ifPresent(now -> {
            curves.show(now);
            curves.paint(palette.get());
        });
    }

    private void movePlot() {
        solved().ifPresent(now -> curves.cursor(palette.get()));
    }
}
