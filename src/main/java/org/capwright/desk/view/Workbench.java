package org.capwright.desk.view;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Duration;
import org.capwright.desk.fit.FitView;
import org.capwright.desk.help.HelpSheet;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.FitDesk;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.PriceDesk;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.session.StockDesk;
import org.capwright.desk.session.ToleranceDesk;
import org.capwright.desk.session.Watched;
import org.capwright.desk.shop.PriceView;
import org.capwright.desk.shop.StockView;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.Sketch;
import org.capwright.export.JobTag;
import org.capwright.export.NestFiles;
import org.capwright.export.PriceFiles;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.ReadingSheetBook;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.stock.StockPlan;
import org.capwright.store.DeskFolder;
import org.capwright.units.ShopFormat;

/** The window: what you type at the left, what you look at in the middle, what is wrong at the right. */
public final class Workbench {
    private static final double DEGREE = Math.toRadians(1);
    private static final List<String> VIEWS = List.of("Swing", "Round", "Blanks", "Stock", "Fit-up", "Price");
    private static final Duration DRAFT_PAUSE = Duration.millis(700);
    private static final List<KeyCode> DIGITS = List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6);

    private final Session session;
    private final DeskFolder folder;
    private final FileDesk files;
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
        makers = List.of(() -> swing, () -> new RoundView(session, attention, palette), () -> new BlankPages(session, latest("pages"), palette),
                () -> new StockView(session, stock, palette, this::writeSheets),
                () -> new FitView(session, fit, new ToleranceDesk(session, latest("tolerance")), palette, this::writeReadingSheet),
                () -> new PriceView(session, price, this::writePrices));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        VIEWS.forEach(view -> tabs.getTabs().add(tab(view)));
        tabs.getTabs().get(0).setContent(swing);
        right = new SplitPane(new CheckPane(session, attention, latest("remedies")), new BuysPane(session, attention, latest("buys")));
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
        root.setTop(new HeadBar(session, files, palette, this::templates, this::help));
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
        keys(scene);
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
            root.getScene().getStylesheets().setAll(palette.get().sheet(), Workbench.class.getResource("/org/capwright/desk/window.css").toExternalForm());
        }
    }

    private void templates() {
        if (session.solvedProperty().get() != null) {
            Path beside = session.fileProperty().get().map(path -> path.toAbsolutePath().getParent()).orElse(Path.of(System.getProperty("user.home")));
            ExportDialog.show(window(), session.solvedProperty().get(), beside.resolve("cap-files"), folder);
        }
    }

    private Window window() {
        return root.getScene().getWindow();
    }

    private void help() {
        HelpSheet.show(window(), session, palette.get());
    }

    private JobTag tag() {
        Solved solved = session.solvedProperty().get();
        return JobTag.of(solved.cap().job(), solved.stamp(), solved.checks());
    }

    private Paper paper() {
        return Paper.valueOf(folder.settings().getOrDefault("paper", Paper.LETTER.name()));
    }

    private void writeSheets(StockPlan plan) {
        JobTag tag = tag();
        ShopFormat format = session.solvedProperty().get().format();
        Outbox.write(window(), "Where to write the sheets", to -> NestFiles.write(to, plan, tag, format));
    }

    private void writePrices(List<Price> prices) {
        JobTag tag = tag();
        Paper on = paper();
        Cap cap = prices.get(0).plan().jobs().get(0).cap();
        Outbox.write(window(), "Where to write quote and inner sheet", to -> PriceFiles.write(to, cap, prices, on, tag));
    }

    private void writeReadingSheet() {
        JobTag tag = tag();
        Paper on = paper();
        Solved solved = session.solvedProperty().get();
        Outbox.write(window(), "Where to write the reading sheet",
                to -> ReadingSheetBook.write(to.resolve("reading-sheet.pdf"), solved.cap(), on, tag, solved.format()));
    }

    private void keys(Scene scene) {
        shortcut(scene, KeyCode.N, files::fresh);
        shortcut(scene, KeyCode.O, files::open);
        shortcut(scene, KeyCode.S, files::save);
        scene.getAccelerators().put(new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN), files::saveAs);
        shortcut(scene, KeyCode.Z, session::undo);
        shortcut(scene, KeyCode.Y, session::redo);
        shortcut(scene, KeyCode.E, this::templates);
        shortcut(scene, KeyCode.P, this::templates);
        for (int i = 0; i < DIGITS.size(); i++) {
            int index = i;
            shortcut(scene, DIGITS.get(i), () -> tabs.getSelectionModel().select(index));
        }
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::plainKey);
        // not a filter: Escape first belongs to what is being typed
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                form.begin();
            }
        });
    }

    private static void shortcut(Scene scene, KeyCode code, Runnable action) {
        scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), action);
    }

    /** Keys without Ctrl: those that text needs stay with the text. */
    private void plainKey(KeyEvent event) {
        boolean writing = root.getScene().getFocusOwner() instanceof TextInputControl;
        if (event.isShortcutDown() || event.isAltDown()) {
            // text fields would take back their own text only
            if (event.isShortcutDown() && writing && (event.getCode() == KeyCode.Z || event.getCode() == KeyCode.Y)) {
                if (event.getCode() == KeyCode.Z) {
                    session.undo();
                } else {
                    session.redo();
                }
                event.consume();
            }
            return;
        }
        switch (event.getCode()) {
            case F1 -> help();
            case F2 -> wide();
            case SPACE -> {
                if (!writing && tabs.getSelectionModel().getSelectedIndex() < 2 && !(root.getScene().getFocusOwner() instanceof ButtonBase)) {
                    swing.playOrStop();
                    event.consume();
                }
            }
            case LEFT -> open(event, writing, -DEGREE);
            case RIGHT -> open(event, writing, DEGREE);
            default -> { }
        }
    }

    private void open(KeyEvent event, boolean writing, double byRad) {
        if (writing || tabs.getSelectionModel().getSelectedIndex() > 1 || session.solvedProperty().get() == null) {
            return;
        }
        double stop = session.solvedProperty().get().cap().stopRad();
        attention.openRadProperty().set(Math.max(0, Math.min(stop, attention.openRadProperty().get() + byRad)));
        event.consume();
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
