package org.capwright.desk.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.ToleranceDesk;
import org.capwright.desk.sketch.HistogramSketch;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.Sketch;
import org.capwright.fitup.tolerance.MarginSpread;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.fitup.tolerance.VarianceShare;
import org.capwright.geom.Bounds;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Before cutting: how many of many builds would clear, which margin to worry about, which tolerance matters. */
final class TolerancePane extends BorderPane {
    private static final String USUAL_BUILDS = "100000";

    private final Session session;
    private final ToleranceDesk desk;
    private final ObjectProperty<Palette> palette;
    private final TextField builds = new TextField(USUAL_BUILDS);
    private final TextField seed = new TextField("1");
    private final Label share = new Label();
    private final Label words = new Label();
    private final ListView<MarginSpread> margins = new ListView<>();
    private final Sketch histogram = new Sketch(this::paint);

    TolerancePane(Session session, ToleranceDesk desk, ObjectProperty<Palette> palette) {
        this.session = session;
        this.desk = desk;
        this.palette = palette;
        share.getStyleClass().add("verdict-large");
        share.setId("tolerance-share");
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        VBox head = new VBox(6, controls(), share, words);
        head.getStyleClass().add("verdict-band");
        margins.setId("tolerance-margins");
        margins.setAccessibleText("Margins, the worst first");
        margins.setCellFactory(view -> cell());
        margins.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> histogram.repaint());
        histogram.setAccessibleText("Builds by margin");
        SplitPane below = new SplitPane(margins, histogram);
        below.setDividerPositions(0.48);
        setTop(head);
        setCenter(below);
        desk.runProperty().addListener((o, was, is) -> show());
        palette.addListener((o, was, is) -> histogram.repaint());
        show();
    }

    private HBox controls() {
        Button run = new Button("Draw builds");
        run.setId("tolerance-run");
        run.setMinWidth(Region.USE_PREF_SIZE);
        run.setOnAction(event -> run());
        Button stop = new Button("Stop");
        stop.setMinWidth(Region.USE_PREF_SIZE);
        stop.setOnAction(event -> desk.stop());
        ProgressBar bar = new ProgressBar(0);
        desk.progressProperty().addListener((o, was, is) -> {
            bar.setProgress(Math.max(0, is.doubleValue()));
            bar.setVisible(is.doubleValue() >= 0);
            stop.setDisable(is.doubleValue() < 0);
        });
        bar.setVisible(false);
        stop.setDisable(true);
        builds.setPrefColumnCount(7);
        builds.setId("tolerance-builds");
        builds.setOnAction(event -> run());
        seed.setPrefColumnCount(5);
        seed.setOnAction(event -> run());
        HBox controls = new HBox(8, label("builds"), builds, label("seed"), seed, run, stop, bar);
        controls.setAlignment(Pos.CENTER_LEFT);
        return controls;
    }

    private static Label label(String text) {
        Label label = new Label(text);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    private void run() {
        Optional<Integer> number = whole(builds.getText()).filter(n -> n >= ToleranceRun.FEWEST
                && n <= ToleranceRun.MOST).map(Long::intValue);
        Optional<Long> start = whole(seed.getText());
        if (number.isEmpty()) {
            words.setText("builds: \"" + builds.getText() + "\" must be a whole number from " + ToleranceRun.FEWEST + " to "
                    + ToleranceRun.MOST + ".");
        } else if (start.isEmpty()) {
            words.setText("seed: \"" + seed.getText() + "\" must be a whole number such as 1.");
        } else {
            desk.start(number.get(), start.get());
        }
    }

    private static Optional<Long> whole(String text) {
        return text.strip().matches("-?\\d{1,15}") ? Optional.of(Long.parseLong(text.strip())) : Optional.empty();
    }

    private void show() {
        ToleranceRun run = desk.runProperty().get();
        if (run == null) {
            share.setText("How many would clear?");
            words.setText("Draws many builds that stray by the tolerances of the form (group Tolerances) and swings each.");
            margins.getItems().clear();
            histogram.repaint();
            return;
        }
        ShopFormat format = session.solvedProperty().get().format();
        share.setText(String.format(Locale.ROOT, "%.1f %% keep every limit", 100 * run.share()));
        words.setText(String.format(Locale.ROOT, "Give or take %.2f %%; an estimate, as good as the tolerances. Of the spread of the least margin ", 200 * run.shareError())
                + String.join(", ", run.least().shares().stream().limit(3).map(one -> words(one, format)).toList()) + ". "
                + annulus(run, format));
        margins.getItems().setAll(run.margins().stream().sorted((a, b) -> Double.compare(a.p01().mm(), b.p01().mm())).toList());
        margins.getItems().add(0, run.least());
        margins.getSelectionModel().select(0);
        histogram.repaint();
    }

    private String words(VarianceShare one, ShopFormat format) {
        return String.format(Locale.ROOT, "%.0f %% is %s (within %s)", 100 * one.share(), one.source().input().label(),
                format.length(session.solvedProperty().get().cap().job().get(one.source().input())));
    }

    private static String annulus(ToleranceRun run, ShopFormat format) {
        String wanted = String.format(Locale.ROOT, "%.4g %%", 100 * run.wantedShare());
        return run.annulus().map(mm -> "An annulus of " + format.length(Length.ofMm(mm)) + " would let " + wanted + " clear.")
                .orElse("No annulus would let " + wanted + " clear: margins that it does not change fail more often.");
    }

    private ListCell<MarginSpread> cell() {
        return new ListCell<>() {
            @Override
            protected void updateItem(MarginSpread spread, boolean empty) {
                super.updateItem(spread, empty);
                setWrapText(true);
                setPrefWidth(0);
                setText(empty || spread == null ? null : row(spread));
            }
        };
    }

    private String row(MarginSpread spread) {
        ShopFormat format = session.solvedProperty().get().format();
        List<String> percentiles = List.of(spread.p01(), spread.p05(), spread.p50()).stream()
                .map(p -> format.length(Length.ofMm(p.mm()))).toList();
        return String.format(Locale.ROOT, "  %s: %.1f %% clear%n  1st %s, 5th %s, 50th percentile %s", spread.words(),
                100 * spread.share(), percentiles.get(0),
                percentiles.get(1), percentiles.get(2));
    }

    private void paint() {
        MarginSpread spread = margins.getSelectionModel().getSelectedItem();
        if (spread != null && session.solvedProperty().get() != null) {
            HistogramSketch.paint(histogram, palette.get(), spread, session.solvedProperty().get().format());
        } else {
            histogram.look(new Bounds(0, 0, 1, 1), 0, palette.get().paper());
        }
    }
}
