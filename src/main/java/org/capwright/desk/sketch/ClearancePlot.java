package org.capwright.desk.sketch;

import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import org.capwright.check.Check;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Solved;
import org.capwright.geom.Bounds;
import org.capwright.swing.Clearance;
import org.capwright.units.Length;

/** Least clearance against opening, one line a pair, the chosen pair's limit drawn; a click goes to that opening. */
public final class ClearancePlot {
    private static final int STEPS = 90;
    private static final double LEFT = 44;
    private static final double BELOW = 20;
    private static final double ABOVE = 16;
    /** Clearances beyond this are out of the picture: what is that far off touches nothing. */
    private static final double MOST_MM = 55;

    private final Sketch sketch;
    private final Attention attention;
    private Solved solved;
    private List<Curve> curves = List.of();

    /**
     * A plot.
     *
     * @param sketch where it is drawn; clicks on it are taken
     * @param attention what is looked at
     */
    public ClearancePlot(Sketch sketch, Attention attention) {
        this.sketch = sketch;
        this.attention = attention;
        sketch.setOnMousePressed(event -> go(event.getX()));
        sketch.setOnMouseDragged(event -> go(event.getX()));
        sketch.setOnMouseClicked(event -> nearest(event.getX(), event.getY()).ifPresent(this::choose));
    }

    private record Curve(Clearance clearance, List<Double> samplesMm) {
    }

    private void choose(Curve curve) {
        String[] word = curve.clearance().pair().word().split("\\.");
        String id = word[0] + "." + curve.clearance().number() + "." + word[1];
        double open = attention.openRadProperty().get();
        solved.checks().stream().filter(check -> check.id().equals(id)).findFirst().ifPresent(check -> {
            attention.checkProperty().set(check);
            attention.openRadProperty().set(open);
        });
    }

    /**
     * Takes another cap.
     *
     * @param now the cap
     */
    public void show(Solved now) {
        if (now != solved) {
            solved = now;
            curves = now.swing().clearances().stream().map(c -> new Curve(c, c.samplesMm(STEPS))).toList();
        }
    }

    private double stop() {
        return solved.cap().stopRad();
    }

    private double x(double rad) {
        return LEFT + (sketch.getWidth() - LEFT - 10) * rad / stop();
    }

    private double y(double mm) {
        double low = Math.min(0, curves.stream().mapToDouble(c -> c.clearance().leastMm()).min().orElse(0));
        double share = (Math.max(low, Math.min(MOST_MM, mm)) - low) / (MOST_MM - low);
        // the root spreads what is near to touching
        return sketch.getHeight() - BELOW - (sketch.getHeight() - BELOW - ABOVE) * Math.sqrt(share);
    }

    private void go(double px) {
        if (solved != null) {
            double rad = (px - LEFT) / (sketch.getWidth() - LEFT - 10) * stop();
            attention.openRadProperty().set(Math.max(0, Math.min(stop(), rad)));
        }
    }

    private Optional<Curve> nearest(double px, double py) {
        int i = (int) Math.round((px - LEFT) / (sketch.getWidth() - LEFT - 10) * STEPS);
        if (i < 0 || i > STEPS) {
            return Optional.empty();
        }
        return curves.stream().filter(c -> Math.abs(y(c.samplesMm().get(i)) - py) < 8)
                .min((a, b) -> Double.compare(Math.abs(y(a.samplesMm().get(i)) - py), Math.abs(y(b.samplesMm().get(i)) - py)));
    }

    /**
     * Draws the plot, all but the line at the opening now.
     *
     * @param palette its colours
     */
    public void paint(Palette palette) {
        sketch.look(new Bounds(0, 0, 1, 1), 0, palette.paper());
        GraphicsContext g = sketch.graphics();
        g.setFill(palette.quiet());
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText("least clearance against opening", LEFT, 12);
        axis(g, palette);
        Check chosen = attention.checkProperty().get();
        for (Curve curve : curves) {
            curve(g, palette, curve, chosen);
        }
    }

    /**
     * Draws the line at the opening now.
     *
     * @param palette its colours
     */
    public void cursor(Palette palette) {
        GraphicsContext g = sketch.graphics();
        g.setStroke(palette.accent());
        g.setLineWidth(1.5);
        double now = x(Math.min(stop(), attention.openRadProperty().get()));
        g.strokeLine(now, ABOVE, now, sketch.getHeight() - BELOW);
    }

    private void axis(GraphicsContext g, Palette palette) {
        g.setStroke(palette.line());
        g.setLineWidth(1);
        for (double mm : new double[] {0, 2, 6.35, 12.7, 25.4, 50.8}) {
            g.strokeLine(LEFT, y(mm), sketch.getWidth() - 10, y(mm));
            g.setTextAlign(TextAlignment.RIGHT);
            g.fillText(solved.format().plain(Length.ofMm(mm)), LEFT - 5, y(mm) + 4);
        }
        g.setTextAlign(TextAlignment.CENTER);
        for (int deg = 0; deg <= Math.toDegrees(stop()); deg += 15) {
            g.fillText(deg + " deg", x(Math.toRadians(deg)), sketch.getHeight() - 5);
        }
    }

    private void curve(GraphicsContext g, Palette palette, Curve curve, Check chosen) {
        String[] word = curve.clearance().pair().word().split("\\.");
        boolean mine = chosen != null && chosen.id().equals(word[0] + "." + curve.clearance().number() + "." + word[1]);
        g.setStroke(mine ? palette.accent() : palette.quiet());
        g.setLineWidth(mine ? 2.4 : 1);
        boolean down = false;
        g.beginPath();
        for (int i = 0; i <= STEPS; i++) {
            double mm = curve.samplesMm().get(i);
            if (mm > MOST_MM) {
                down = false;
            } else if (down) {
                g.lineTo(x(stop() * i / STEPS), y(mm));
            } else {
                g.moveTo(x(stop() * i / STEPS), y(mm));
                down = true;
            }
        }
        g.stroke();
        if (mine) {
            g.setStroke(palette.trouble());
            g.setLineDashes(5, 4);
            g.strokeLine(LEFT, y(chosen.limit().value()), sketch.getWidth() - 10, y(chosen.limit().value()));
            g.setLineDashes();
            g.setFill(palette.accent());
            g.setTextAlign(TextAlignment.RIGHT);
            g.fillText(chosen.words(), sketch.getWidth() - 12, 12);
        }
    }
}
