package org.capwright.desk.view;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.capwright.desk.fit.FitView;
import org.capwright.desk.help.HelpSheet;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.FitDesk;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.PriceDesk;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.StockDesk;
import org.capwright.desk.session.ToleranceDesk;
import org.capwright.desk.session.Watched;
import org.capwright.desk.shop.PriceView;
import org.capwright.desk.shop.StockView;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.Sketch;
import org.capwright.price.Price;
import org.capwright.store.DeskFolder;

/** The window: what you type at the left, what you look at in the middle, what is wrong at the right. */
public final class Workbench {
    private static final List<String> VIEWS = List.of("Swing", "Round", "Blanks", "Stock", "Fit-up", "Price");
    private static final Duration DRAFT_PAUSE = Duration.millis(700);

    private final Session session;
    private final DeskFolder folder;
    private final FileDesk files;
    private final Writings writings;
    private final Attention attention = new Attention();
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);
    private final TabPane tabs = new TabPane();
    private final SplitPane all = new SplitPane();
    private final PauseTransition draftPause = new PauseTransition(DRAFT_PAUSE);
    private final BorderPane root = new BorderPane();
    private final StockDesk stock;
    private final FitDesk fit;
    private final PriceDesk price;
    private SwingView swing;
    private List<Supplier<Node>> makers;
    private JobForm form;
    private SplitPane right;
    private double[] dividers = {0.25, 0.74};

    /**
     * The window of a session.
     *
     * @param session what is open
     * @param folder where settings and drafts are kept
     */
    public Workbench(Session session, DeskFolder folder) {
        this.session = session;
        this.folder = folder;
        this.files = new FileDesk(session, folder);
        this.writings = new Writings(session, folder, () -> root.getScene().getWindow());
        this.stock = new StockDesk(session, latest("nest"));
        this.fit = new FitDesk(session, latest("fit"));
        this.price = new PriceDesk(session, latest("price"), latest("compare"));
        palette.set("dark".equals(folder.settings().get("look")) ? Palette.DARK : Palette.LIGHT);
        makeParts();
        bind();
    }

    private static Latest latest(String name) {
        return Latest.onOwnThread(name, Platform::runLater);
    }

    private void makeParts() {
        swing = new SwingView(session, attention, palette);
        form = new JobForm(session, attention);
        makers = List.of(() -> swing, () -> new RoundView(session, attention, palette),
                () -> new BlankPages(session, latest("pages"), palette),
                () -> new StockView(session, stock, palette, writings::sheets),
                () -> new FitView(session, fit, new ToleranceDesk(session, latest("tolerance")), palette, writings::readingSheet),
                () -> new PriceView(session, price, writings::prices));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        VIEWS.forEach(view -> tabs.getTabs().add(tab(view)));
        tabs.getTabs().get(0).setContent(swing);
        right = new SplitPane(new CheckPane(session, attention, latest("remedies")),
                new BuysPane(session, attention, latest("buys")));
        right.setOrientation(Orientation.VERTICAL);
        right.setDividerPositions(0.64);
        right.getStyleClass().add("side");
        right.setPrefWidth(340);
        right.setMinWidth(240);
        all.getItems().setAll(form, tabs, right);
        String kept = folder.settings().getOrDefault("dividers", "");
        if (kept.matches("0\\.\\d{4} 0\\.\\d{4}")) {
            dividers = Arrays.stream(kept.split(" ")).mapToDouble(Double::parseDouble).toArray();
        }
        all.setDividerPositions(dividers);
        SplitPane.setResizableWithParent(form, false);
        SplitPane.setResizableWithParent(right, false);
        root.setTop(new HeadBar(session, files, palette, writings::templates, this::help));
        root.setCenter(all);
        root.setBottom(new FootBar(session));
    }

    /** Gives the view the whole window, or gives the sides their places back. */
    private void wide() {
        if (all.getItems().size() > 1) {
            dividers = all.getDividerPositions();
            all.getItems().setAll(tabs);
        } else {
            all.getItems().setAll(form, tabs, right);
            all.setDividerPositions(dividers);
        }
    }

    private static Tab tab(String name) {
        Tab tab = new Tab(name);
        tab.setId("tab-" + name.toLowerCase(Locale.ROOT));
        return tab;
    }

    private void bind() {
        palette.addListener((o, was, is) -> {
            folder.keep("look", is == Palette.DARK ? "dark" : "light");
            style();
        });
        tabs.getSelectionModel().selectedIndexProperty().addListener((o, was, is) -> watch(is.intValue()));
        draftPause.setOnFinished(event -> {
            if (session.unsavedProperty().get()) {
                folder.keepDraft(session.textProperty().get(), session.fileProperty().get());
            }
        });
        session.textProperty().addListener((o, was, is) -> draftPause.playFromStart());
    }

    /** A view is made when it is first looked at, and only what is looked at is worked out. */
    private void watch(int index) {
        Tab shown = tabs.getTabs().get(index);
        if (shown.getContent() == null) {
            shown.setContent(makers.get(index).get());
        }
        for (Tab tab : tabs.getTabs()) {
            if (tab.getContent() instanceof Watched view) {
                view.setWatched(tab == shown);
            }
        }
        // the tab is shown first
        Platform.runLater(() -> Sketch.refresh(shown.getContent()));
    }

    /**
     * Shows the window.
     *
     * @param stage where
     */
    public void show(Stage stage) {
        Scene scene = new Scene(root, number("width", 1280), number("height", 800));
        stage.setMinWidth(1000);
        stage.setMinHeight(640);
        stage.setScene(scene);
        style();
        files.setWindow(stage);
        new Shortcuts(session, attention, tabs, swing).bind(scene,
                Map.of(KeyCode.N, files::fresh, KeyCode.O, files::open, KeyCode.S, files::save,
                KeyCode.E, writings::templates, KeyCode.P, writings::templates), files::saveAs,
                Map.of(KeyCode.F1, this::help, KeyCode.F2, this::wide), form::begin);
        scene.setOnDragOver(this::dragOver);
        scene.setOnDragDropped(this::drop);
        stage.setOnCloseRequest(event -> {
            if (files.mayLeave()) {
                keep(scene);
            } else {
                event.consume();
            }
        });
        session.fileProperty().addListener((o, was, is) -> title(stage));
        title(stage);
        stage.show();
        String view = folder.settings().getOrDefault("view", "");
        if (view.matches("[0-5]")) {
            tabs.getSelectionModel().select(Integer.parseInt(view));
        }
        form.begin();
        FrameLog.shown();
    }

    private void title(Stage stage) {
        stage.setTitle("Capwright" + session.fileProperty().get().map(path -> ": " + path.getFileName()).orElse(""));
    }

    private double number(String name, double otherwise) {
        String text = folder.settings().getOrDefault(name, "");
        return text.matches("\\d{3,5}") ? Double.parseDouble(text) : otherwise;
    }

    private void keep(Scene scene) {
        folder.keep("width", Long.toString(Math.round(scene.getWidth())));
        folder.keep("height", Long.toString(Math.round(scene.getHeight())));
        folder.keep("view", Integer.toString(tabs.getSelectionModel().getSelectedIndex()));
        double[] kept = all.getItems().size() > 1 ? all.getDividerPositions() : dividers;
        folder.keep("dividers", String.format(Locale.ROOT, "%.4f %.4f", kept[0], kept[1]));
        session.fileProperty().get().ifPresent(path -> folder.keep("last", path.toAbsolutePath().toString()));
        folder.dropDraft();
    }

    private void style() {
        if (root.getScene() != null) {
            root.getScene().getStylesheets().setAll(palette.get().sheet(),
                    Workbench.class.getResource("/org/capwright/desk/window.css").toExternalForm());
        }
    }

    private void help() {
        HelpSheet.show(root.getScene().getWindow(), session, palette.get());
    }

    private void dragOver(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
        }
    }

    private void drop(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            files.open(event.getDragboard().getFiles().get(0).toPath());
            event.setDropCompleted(true);
        }
    }
}
