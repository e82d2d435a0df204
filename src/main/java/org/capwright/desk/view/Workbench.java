package org.capwright.desk.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.animation.PauseTransition;
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
import javafx.util.Duration;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.desk.sketch.Palette;
import org.capwright.store.DeskFolder;

/** The window: what you type at the left, what you look at in the middle, what is wrong at the right. */
public final class Workbench {
    private static final double DEGREE = Math.toRadians(1);
    private static final Duration DRAFT_PAUSE = Duration.millis(700);
    private static final List<KeyCode> DIGITS = List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4);

    private final Session session;
    private final DeskFolder folder;
    private final FileDesk files;
    private final Attention attention = new Attention();
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);
    private final TabPane tabs = new TabPane();
    private final PauseTransition draftPause = new PauseTransition(DRAFT_PAUSE);
    private final BorderPane root = new BorderPane();
    private SwingView swing;
    private PagesView pages;
    private JobForm form;

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
        palette.set("dark".equals(folder.settings().get("look")) ? Palette.DARK : Palette.LIGHT);
        makeParts();
        bind();
    }

    private void makeParts() {
        swing = new SwingView(session, attention, palette);
        pages = new PagesView(session);
        form = new JobForm(session, attention);
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        tabs.getTabs().setAll(tab("Swing", swing), tab("Round", new RoundView(session, attention, palette)),
                tab("Blanks", new BlanksView(session, palette)), tab("Pages", pages));
        SplitPane right = new SplitPane(new CheckPane(session, attention), new BuysPane(session, attention));
        right.setOrientation(Orientation.VERTICAL);
        right.setDividerPositions(0.64);
        right.getStyleClass().add("side");
        right.setPrefWidth(340);
        right.setMinWidth(240);
        SplitPane all = new SplitPane(form, tabs, right);
        all.setDividerPositions(0.25, 0.74);
        SplitPane.setResizableWithParent(form, false);
        SplitPane.setResizableWithParent(right, false);
        root.setTop(new HeadBar(session, files, palette, this::templates));
        root.setCenter(all);
        root.setBottom(new FootBar(session));
    }

    private static Tab tab(String name, Node content) {
        Tab tab = new Tab(name, content);
        tab.setId("tab-" + name.toLowerCase(Locale.ROOT));
        return tab;
    }

    private void bind() {
        palette.addListener((o, was, is) -> {
            folder.keep("look", is == Palette.DARK ? "dark" : "light");
            style();
        });
        tabs.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> refreshPages());
        session.solvedProperty().addListener((o, was, is) -> refreshPages());
        draftPause.setOnFinished(event -> {
            if (session.unsavedProperty().get()) {
                folder.keepDraft(session.textProperty().get(), session.fileProperty().get());
            }
        });
        session.textProperty().addListener((o, was, is) -> draftPause.playFromStart());
    }

    private void refreshPages() {
        if (tabs.getSelectionModel().getSelectedItem().getContent() == pages) {
            pages.refresh();
        }
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
            ExportDialog.show(root.getScene().getWindow(), session.solvedProperty().get(), beside.resolve("cap-files"));
        }
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
            case F1 -> HelpSheet.show(root.getScene().getWindow());
            case ESCAPE -> form.requestFocus();
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
        if (writing || session.solvedProperty().get() == null) {
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
