package org.capwright.desk.view;

import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Undoable;

/** What keys do. Keys that text needs stay with the text, but for undo and redo, which belong to the whole job or shop's file. */
final class Shortcuts {
    private static final double DEGREE = Math.toRadians(1);
    private static final List<KeyCode> DIGITS = List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4,
            KeyCode.DIGIT5, KeyCode.DIGIT6);
    /** Views in which the leaves move. */
    private static final int MOVING_VIEWS = 2;

    private final Session session;
    private final Attention attention;
    private final TabPane tabs;
    private final SwingView swing;
    private Map<KeyCode, Runnable> plain = Map.of();

    Shortcuts(Session session, Attention attention, TabPane tabs, SwingView swing) {
        this.session = session;
        this.attention = attention;
        this.tabs = tabs;
        this.swing = swing;
    }

    /** Binds keys of a scene: those with Ctrl, Ctrl+Shift+S, those without, and Escape. */
    void bind(Scene scene, Map<KeyCode, Runnable> control, Runnable saveAs, Map<KeyCode, Runnable> without, Runnable escape) {
        plain = without;
        control.forEach((code, action) -> scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN),
                action));
        scene.getAccelerators().put(new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                saveAs);
        for (int i = 0; i < DIGITS.size(); i++) {
            int index = i;
            scene.getAccelerators().put(new KeyCodeCombination(DIGITS.get(i), KeyCombination.SHORTCUT_DOWN),
                    () -> tabs.getSelectionModel().select(index));
        }
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> press(event, scene.getFocusOwner()));
        // not a filter: Escape first belongs to what is being typed
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                escape.run();
            }
        });
    }

    private void press(KeyEvent event, Node focus) {
        if (event.isShortcutDown()) {
            undoOrRedo(event, focus);
        } else if (!event.isAltDown()) {
            press(event, focus instanceof TextInputControl, focus instanceof ButtonBase);
        }
    }

    private void undoOrRedo(KeyEvent event, Node focus) {
        if (event.getCode() == KeyCode.Z && !event.isShiftDown()) {
            owner(focus).undo();
            event.consume();
        } else if (event.getCode() == KeyCode.Y || event.getCode() == KeyCode.Z) {
            owner(focus).redo();
            event.consume();
        }
    }

    /** What an edit at a node is an edit of: a shop's file inside its editor, else the job. */
    private Undoable owner(Node focus) {
        for (Node node = focus; node != null; node = node.getParent()) {
            if (node.getProperties().get(Undoable.class) instanceof Undoable file) {
                return file;
            }
        }
        return session;
    }

    private void press(KeyEvent event, boolean writing, boolean button) {
        if (plain.containsKey(event.getCode())) {
            plain.get(event.getCode()).run();
            event.consume();
        } else if (!writing && tabs.getSelectionModel().getSelectedIndex() < MOVING_VIEWS) {
            move(event, button);
        }
    }

    private void move(KeyEvent event, boolean button) {
        if (event.getCode() == KeyCode.SPACE && !button) {
            swing.playOrStop();
            event.consume();
        } else if (event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT) {
            open(event.getCode() == KeyCode.LEFT ? -DEGREE : DEGREE);
            event.consume();
        }
    }

    private void open(double byRad) {
        if (session.solvedProperty().get() != null) {
            double stop = session.solvedProperty().get().cap().stopRad();
            attention.openRadProperty().set(Math.max(0, Math.min(stop, attention.openRadProperty().get() + byRad)));
        }
    }
}
