package org.capwright.desk.view;

import java.util.EnumSet;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.capwright.blank.Blank;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.sketch.BlankSketch;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.Sketch;
import org.capwright.drawing.Layer;
import org.capwright.drawing.Station;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.units.Length;

/** Every blank at true proportions: layers on and off, zoom about the pointer, pan, measure between two points. */
final class BlanksView extends BorderPane {
    private static final double EDGE_PX = 30;
    /** Room for the caption, and for dimensions that their neighbours push up. */
    private static final double TOP_PX = 66;
    private static final String HINT = "Drag to measure, drag with the right button to move, turn the wheel to zoom, double-click to fit. Point at a dimension to see what it is.";

    private final Session session;
    private final ObjectProperty<Palette> palette;
    private final ListView<Blank> list = new ListView<>();
    private final Sketch sketch = new Sketch(this::paint);
    private final Label measured = new Label(HINT);
    private final Set<Layer> hidden = EnumSet.noneOf(Layer.class);
    private double pxPerMm;
    private Vec2 originPx = Vec2.ZERO;
    private Vec2 from;
    private Vec2 to;
    private boolean shown;
    private double lastX;
    private double lastY;

    BlanksView(Session session, ObjectProperty<Palette> palette) {
        this.session = session;
        this.palette = palette;
        list.setPrefWidth(170);
        list.setId("blanks");
        list.setAccessibleText("Blanks");
        list.setCellFactory(view -> new ListCell<>() {
            @Override
            protected void updateItem(Blank blank, boolean empty) {
                super.updateItem(blank, empty);
                setText(empty || blank == null ? null : "  " + blank.name() + "   x " + blank.quantity());
            }
        });
        list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> fit());
        HBox layers = new HBox(12);
        layers.setAlignment(Pos.CENTER_LEFT);
        layers.setPadding(new Insets(5, 10, 5, 10));
        for (Layer layer : Layer.values()) {
            layers.getChildren().add(box(layer));
        }
        measured.getStyleClass().addAll("quiet", "small");
        measured.setPadding(new Insets(0, 10, 6, 10));
        setLeft(list);
        setCenter(sketch);
        setBottom(new VBox(layers, measured));
        sketch.setOnScroll(this::zoom);
        sketch.setOnMousePressed(this::press);
        sketch.setOnMouseDragged(this::drag);
        sketch.setOnMouseMoved(this::point);
        sketch.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                fit();
            }
        });
        sketch.widthProperty().addListener(o -> fit());
        sketch.heightProperty().addListener(o -> fit());
        palette.addListener((o, was, is) -> sketch.repaint());
        session.solvedProperty().addListener((o, was, is) -> show());
        show();
    }

    private CheckBox box(Layer layer) {
        CheckBox box = new CheckBox(layer.word());
        box.setSelected(true);
        box.setMinWidth(Region.USE_PREF_SIZE);
        box.selectedProperty().addListener((o, was, is) -> {
            if (is) {
                hidden.remove(layer);
            } else {
                hidden.add(layer);
            }
            sketch.repaint();
        });
        return box;
    }

    /** Whether it is looked at; the list is not touched while it is not. */
    void setShown(boolean now) {
        shown = now;
        show();
    }

    private void show() {
        Solved solved = session.solvedProperty().get();
        if (solved == null || !shown || solved.blanks().equals(list.getItems())) {
            return;
        }
        Blank chosen = list.getSelectionModel().getSelectedItem();
        list.getItems().setAll(solved.blanks());
        int index = Math.max(0, solved.blanks().stream().map(Blank::id).toList().indexOf(chosen == null ? "leaf-1"
                : chosen.id()));
        list.getSelectionModel().select(index);
    }

    private void fit() {
        Blank blank = list.getSelectionModel().getSelectedItem();
        if (blank == null) {
            return;
        }
        Bounds bounds = blank.drawing().bounds();
        double width = Math.max(50, sketch.getWidth() - BlankSketch.ROOM_PX - EDGE_PX);
        double height = Math.max(50, sketch.getHeight() - BlankSketch.ROOM_PX - TOP_PX);
        pxPerMm = Math.min(width / bounds.width(), height / bounds.height());
        originPx = new Vec2(BlankSketch.ROOM_PX + width / 2 - bounds.center().x() * pxPerMm, TOP_PX + height / 2
                + bounds.center().y() * pxPerMm);
        from = null;
        to = null;
        sketch.repaint();
    }

    private void zoom(ScrollEvent event) {
        double factor = Math.exp(event.getDeltaY() / 300);
        Vec2 pointer = new Vec2(event.getX(), event.getY());
        originPx = pointer.plus(originPx.minus(pointer).times(factor));
        pxPerMm *= factor;
        sketch.repaint();
    }

    private void point(MouseEvent event) {
        Blank blank = list.getSelectionModel().getSelectedItem();
        if (blank != null && to == null) {
            measured.setText(BlankSketch.at(sketch, blank.drawing(), event.getX(), event.getY()).map(station -> station.what()
                    + ": "
                    + session.solvedProperty().get().format().both(Length.ofMm(station.positionMm()
                    - (station.along() == Station.Side.BOTTOM ? blank.drawing().bounds().minX()
                            : blank.drawing().bounds().minY())))).orElse(HINT));
        }
    }

    private void press(MouseEvent event) {
        lastX = event.getX();
        lastY = event.getY();
        if (event.getButton() == MouseButton.PRIMARY) {
            from = sketch.plane(event.getX(), event.getY());
            to = null;
        }
    }

    private void drag(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY && from != null) {
            to = sketch.plane(event.getX(), event.getY());
            measured.setText(session.solvedProperty().get().format().both(Length.ofMm(from.distance(to))));
        } else {
            originPx = originPx.plus(new Vec2(event.getX() - lastX, event.getY() - lastY));
        }
        lastX = event.getX();
        lastY = event.getY();
        sketch.repaint();
    }

    private void paint() {
        Blank blank = list == null ? null : list.getSelectionModel().getSelectedItem();
        if (blank == null || pxPerMm <= 0) {
            return;
        }
        sketch.look(pxPerMm, originPx, palette.get().paper());
        BlankSketch.paint(sketch, palette.get(), blank.drawing(), hidden, session.solvedProperty().get().format());
        caption(blank);
        if (from != null && to != null) {
            sketch.graphics().setStroke(palette.get().accent());
            sketch.graphics().setLineWidth(1.5);
            sketch.line(from.x(), from.y(), to.x(), to.y());
        }
    }

    private void caption(Blank blank) {
        if (hidden.contains(Layer.TEXT)) {
            return;
        }
        GraphicsContext g = sketch.graphics();
        g.setFill(palette.get().ink());
        g.setTextAlign(TextAlignment.LEFT);
        Solved solved = session.solvedProperty().get();
        g.fillText(blank.name() + ", cut " + blank.quantity() + "   " + solved.format().length(Length.ofMm(blank.lengthMm()))
                + " x "
                + solved.format().length(Length.ofMm(blank.widthMm())), 10, 16);
        g.setFill(palette.get().quiet());
        g.fillText(blank.faceUp() + ", " + blank.grain().words(), 10, 32);
    }
}
