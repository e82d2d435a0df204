package org.capwright.desk.shop;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.StockDesk;
import org.capwright.desk.session.StockDesk.Nested;
import org.capwright.desk.session.StockDesk.Wish;
import org.capwright.desk.session.Watched;
import org.capwright.desk.sketch.Palette;
import org.capwright.export.Money;
import org.capwright.stock.StockPlan;

/** What the job is cut from: sheets and bars to scale; and the stock itself, to be edited. */
public final class StockView extends BorderPane implements Watched {
    private static final double MOST_SECONDS = 60;
    private static final int MOST_CAPS = 100;

    private final Session session;
    private final StockDesk desk;
    private final TextField caps = new TextField("1");
    private final TextField seconds = new TextField("2");
    private final Label summary = new Label();
    private final Label state = new Label();
    private final HBox split = new HBox(8);

    /**
     * The view.
     *
     * @param session what is open
     * @param desk its stock plan
     * @param palette the colours
     * @param write writes the sheets as files
     */
    public StockView(Session session, StockDesk desk, ObjectProperty<Palette> palette, Consumer<StockPlan> write) {
        this.session = session;
        this.desk = desk;
        LayoutList sheets = new LayoutList(session, desk, palette);
        StockEditor editor = new StockEditor(session.shop().stock());
        ToggleButton sheetsButton = new ToggleButton("Sheets and bars");
        ToggleButton stockButton = new ToggleButton("Shop's stock");
        stockButton.setId("stock-edit");
        ToggleGroup group = new ToggleGroup();
        group.getToggles().setAll(sheetsButton, stockButton);
        sheetsButton.setSelected(true);
        Button export = new Button("Write sheets...");
        export.setOnAction(event -> Optional.ofNullable(desk.nestedProperty().get()).flatMap(Nested::plan).ifPresent(write));
        BorderPane layouts = new BorderPane(sheets);
        layouts.setTop(head(export));
        group.selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null) {
                was.setSelected(true);
            } else {
                setCenter(is == stockButton ? editor : layouts);
            }
        });
        HBox bar = new HBox(6, sheetsButton, stockButton);
        bar.getStyleClass().add("view-bar");
        setTop(bar);
        setCenter(layouts);
        desk.nestedProperty().addListener((o, was, is) -> show());
        desk.searchingProperty().addListener((o, was, is) -> show());
        desk.wishProperty().addListener((o, was, is) -> show());
        show();
    }

    private VBox head(Button export) {
        Button keep = new Button("Keep this");
        keep.setOnAction(event -> desk.keepBest());
        desk.searchingProperty().addListener((o, was, is) -> keep.setDisable(!is));
        keep.setDisable(true);
        Button with = new Button("With another job...");
        with.setOnAction(event -> with());
        Button alone = new Button("This job alone");
        alone.setOnAction(event -> wish(List.of()));
        alone.disableProperty().bind(desk.wishProperty().map(wish -> wish.others().isEmpty()));
        caps.setPrefColumnCount(3);
        caps.setId("stock-caps");
        caps.setOnAction(event -> wish(desk.wishProperty().get().others()));
        seconds.setPrefColumnCount(3);
        seconds.setOnAction(event -> wish(desk.wishProperty().get().others()));
        summary.getStyleClass().add("job-name");
        summary.setId("stock-summary");
        summary.setWrapText(true);
        summary.setMinHeight(Region.USE_PREF_SIZE);
        state.getStyleClass().add("quiet");
        state.setWrapText(true);
        state.setMinHeight(Region.USE_PREF_SIZE);
        FlowPane controls = new FlowPane(8, 6, pair("caps", caps), pair("seconds at most", seconds), keep, with, alone, export);
        split.setAlignment(Pos.CENTER_LEFT);
        VBox head = new VBox(5, controls, summary, state, split);
        head.getStyleClass().add("view-bar");
        return head;
    }

    private static HBox pair(String text, TextField field) {
        Label label = new Label(text);
        label.setLabelFor(field);
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox pair = new HBox(5, label, field);
        pair.setAlignment(Pos.CENTER_LEFT);
        return pair;
    }

    private void with() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Capwright jobs", "*.json"));
        File file = chooser.showOpenDialog(getScene().getWindow());
        if (file != null) {
            List<Path> others = new ArrayList<>(desk.wishProperty().get().others());
            others.add(file.toPath());
            wish(others);
        }
    }

    private void wish(List<Path> others) {
        Optional<Double> number = number(caps.getText()).filter(n -> n >= 1 && n <= MOST_CAPS && n == Math.rint(n));
        Optional<Double> time = number(seconds.getText()).filter(s -> s > 0 && s <= MOST_SECONDS);
        if (number.isEmpty()) {
            state.setText("caps: \"" + caps.getText() + "\" must be a whole number from 1 to " + MOST_CAPS + ".");
        } else if (time.isEmpty()) {
            state.setText("seconds: \"" + seconds.getText() + "\" must be over 0 and at most " + (int) MOST_SECONDS + ".");
        } else {
            desk.wishProperty().set(new Wish(number.get().intValue(), time.get(), desk.wishProperty().get().seed(), others));
        }
    }

    private static Optional<Double> number(String text) {
        return text.strip().matches("\\d{1,4}(\\.\\d{1,3})?") ? Optional.of(Double.parseDouble(text.strip())) : Optional.empty();
    }

    private void show() {
        Nested nested = desk.nestedProperty().get();
        boolean searching = desk.searchingProperty().get();
        if (nested == null) {
            summary.setText(searching ? "Nesting" : "");
            return;
        }
        summary.setText(nested.plan().map(this::words).orElseGet(() -> "At best so far " + nested.groups().stream()
                .mapToInt(group -> group.nest().sheets().size()).sum() + " sheets"));
        state.setText(others() + (searching ? "Searching; what is found shows as it gets better. Keep this ends it."
                : session.shop().stock().valueProperty().get().note()));
        split(nested);
    }

    private String others() {
        List<Path> others = desk.wishProperty().get().others();
        return others.isEmpty() ? "" : "Cut with " + others.stream().map(path -> path.getFileName().toString()).collect(Collectors.joining(", ")) + ". ";
    }

    private String words(StockPlan plan) {
        String bound = plan.sheetCount() == plan.sheetBound() ? "no layout can use fewer" : "no layout can use fewer than "
                + plan.sheetBound();
        return String.format(Locale.ROOT, "%d sheets; %s.  %s, use %.0f %%, scrap %s%s", plan.sheetCount(), bound,
                new Money(plan.shop().currency()).of(plan.sheetPrice()),
                100 * plan.use(), session.solvedProperty().get().format().mass(plan.scrapKg()), plan.complete() ? ""
                : ".  Not everything has a place")
                .replaceFirst("^1 sheets", "1 sheet");
    }

    /** A cylinder that is longer than any sheet was nested in more pieces; the job itself should say so. */
    private void split(Nested nested) {
        split.getChildren().clear();
        split.setManaged(!nested.split().isEmpty());
        if (!nested.split().isEmpty()) {
            Label words = new Label("Too long for any sheet as drawn, so nested with " + nested.split().entrySet().stream()
                    .map(one -> one.getKey().replace('.', ' ') + " " + one.getValue()).collect(Collectors.joining(", ")) + ".");
            words.setWrapText(true);
            Button type = new Button("Type it into the job");
            type.setMinWidth(Region.USE_PREF_SIZE);
            type.setOnAction(event -> session.type(nested.split()));
            split.getChildren().setAll(words, type);
        }
    }

    @Override
    public void setWatched(boolean now) {
        desk.watchedProperty().set(now);
    }
}
