package org.capwright.desk.sketch;

import java.util.List;
import javafx.animation.Interpolator;
import javafx.animation.KeyFrame;
import javafx.animation.KeyValue;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.util.Duration;

/** A ring that closes in on a place, once, and is gone. */
final class Pulse {
    private static final double FROM_PX = 45;
    private static final double TO_PX = 9;
    private static final double WIDTH_PX = 3;
    private static final double FADED = 0.2;
    private static final Duration LASTS = Duration.millis(700);

    private Pulse() {
    }

    static void play(List<Node> surface, double x, double y, Color color) {
        Circle ring = new Circle(x, y, FROM_PX, Color.TRANSPARENT);
        ring.setStroke(color);
        ring.setStrokeWidth(WIDTH_PX);
        ring.setMouseTransparent(true);
        ring.setManaged(false);
        surface.add(ring);
        Timeline closing = new Timeline(new KeyFrame(LASTS, new KeyValue(ring.radiusProperty(), TO_PX, Interpolator.EASE_OUT),
                new KeyValue(ring.opacityProperty(), FADED, Interpolator.EASE_IN)));
        closing.setOnFinished(event -> surface.remove(ring));
        closing.play();
    }
}
