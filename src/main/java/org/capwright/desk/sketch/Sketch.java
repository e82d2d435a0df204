package org.capwright.desk.sketch;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/**
 * A drawing surface that keeps a piece of the drawing plane (mm, y up) in view, as large as fits. Whoever draws on it sets
 * {@link #look} first.
 */
public final class Sketch extends Pane {
    private static final double TEXT_PX = 12;

    private final Canvas ground = new Canvas();
    private final Canvas top = new Canvas();
    private final Runnable painter;
    private final Optional<Runnable> mover;
    private Canvas canvas = ground;
    private boolean stale = true;
    private Bounds seen = new Bounds(0, 0, 1, 1);
    private double scale = 1;
    private Vec2 origin = Vec2.ZERO;

    /**
     * A surface.
     *
     * @param painter draws everything anew; called when the size changes
     */
    public Sketch(Runnable painter) {
        this(painter, Optional.empty());
    }

    /**
     * A surface with something that moves over what stands still, so that only that is drawn anew while it moves.
     *
     * @param painter draws what stands still
     * @param mover draws what moves; called after the painter, and by {@link #move}
     */
    public Sketch(Runnable painter, Runnable mover) {
        this(painter, Optional.of(mover));
    }

    private Sketch(Runnable painter, Optional<Runnable> mover) {
        this.painter = painter;
        this.mover = mover;
        getChildren().add(ground);
        mover.ifPresent(it -> getChildren().add(top));
        getStyleClass().add("paper");
        setMinSize(120, 90);
        for (Canvas layer : List.of(ground, top)) {
            layer.widthProperty().bind(widthProperty());
            layer.heightProperty().bind(heightProperty());
        }
        widthProperty().addListener(o -> repaint());
        heightProperty().addListener(o -> repaint());
        sceneProperty().addListener(o -> repaintIfStale());
    }

    /**
     * A surface whose painter is told where to draw.
     *
     * @param painter draws everything anew
     * @return the surface
     */
    public static Sketch of(Consumer<Sketch> painter) {
        Sketch[] made = new Sketch[1];
        made[0] = new Sketch(() -> painter.accept(made[0]));
        return made[0];
    }

    /**
     * Clears the surface and brings a piece of the plane into view.
     *
     * @param plane the piece, mm
     * @param edgePx left free round it
     * @param paper colour of the ground
     */
    public void look(Bounds plane, double edgePx, Color paper) {
        GraphicsContext g = graphics();
        g.setFill(paper);
        g.fillRect(0, 0, getWidth(), getHeight());
        double width = Math.max(10, getWidth() - 2 * edgePx);
        double height = Math.max(10, getHeight() - 2 * edgePx);
        seen = plane;
        scale = Math.min(width / plane.width(), height / plane.height());
        origin = new Vec2(getWidth() / 2 - plane.center().x() * scale, getHeight() / 2 + plane.center().y() * scale);
        g.setFont(Font.font(TEXT_PX));
    }

    /**
     * Looks at a given scale; for views that zoom.
     *
     * @param pxPerMm the scale
     * @param originPx where the plane's origin lies
     * @param paper colour of the ground
     */
    public void look(double pxPerMm, Vec2 originPx, Color paper) {
        GraphicsContext g = graphics();
        g.setFill(paper);
        g.fillRect(0, 0, getWidth(), getHeight());
        scale = pxPerMm;
        origin = originPx;
        g.setFont(Font.font(TEXT_PX));
    }

    /**
     * The piece of the plane that was last brought into view.
     *
     * @return its bounds, mm
     */
    public Bounds seen() {
        return seen;
    }

    /**
     * What to draw with.
     *
     * @return the surface's graphics, in pixels
     */
    public GraphicsContext graphics() {
        return canvas.getGraphicsContext2D();
    }

    /**
     * The scale.
     *
     * @return pixels per mm
     */
    public double scale() {
        return scale;
    }

    /**
     * Where an x lies.
     *
     * @param mm in the plane
     * @return pixels from the left
     */
    public double x(double mm) {
        return origin.x() + mm * scale;
    }

    /**
     * Where a y lies.
     *
     * @param mm in the plane, up
     * @return pixels from the top
     */
    public double y(double mm) {
        return origin.y() - mm * scale;
    }

    /**
     * What lies under a pixel.
     *
     * @param px from the left
     * @param py from the top
     * @return point of the plane, mm
     */
    public Vec2 plane(double px, double py) {
        return new Vec2((px - origin.x()) / scale, (origin.y() - py) / scale);
    }

    /**
     * A line between two points of the plane.
     *
     * @param x1 x of the one, mm
     * @param y1 y of the one, mm
     * @param x2 x of the other, mm
     * @param y2 y of the other, mm
     */
    public void line(double x1, double y1, double x2, double y2) {
        graphics().strokeLine(x(x1), y(y1), x(x2), y(y2));
    }

    /**
     * A closed polygon.
     *
     * @param points its corners, mm
     * @param fill its fill, null for none
     * @param stroke its edge
     * @param width of the edge, pixels
     */
    public void polygon(List<Vec2> points, Color fill, Color stroke, double width) {
        double[] xs = points.stream().mapToDouble(p -> x(p.x())).toArray();
        double[] ys = points.stream().mapToDouble(p -> y(p.y())).toArray();
        GraphicsContext g = graphics();
        if (fill != null) {
            g.setFill(fill);
            g.fillPolygon(xs, ys, xs.length);
        }
        g.setStroke(stroke);
        g.setLineWidth(width);
        g.strokePolygon(xs, ys, xs.length);
    }

    /**
     * A circle.
     *
     * @param x of the centre, mm
     * @param y of the centre, mm
     * @param radius mm
     * @param fill its fill, null for none
     * @param stroke its edge
     * @param width of the edge, pixels
     */
    public void circle(double x, double y, double radius, Color fill, Color stroke, double width) {
        GraphicsContext g = graphics();
        double px = radius * scale;
        if (fill != null) {
            g.setFill(fill);
            g.fillOval(x(x) - px, y(y) - px, 2 * px, 2 * px);
        }
        g.setStroke(stroke);
        g.setLineWidth(width);
        g.strokeOval(x(x) - px, y(y) - px, 2 * px, 2 * px);
    }

    /**
     * Draws the eye to a place, once: a ring that closes in on it and is gone.
     *
     * @param mm the place in the plane
     * @param color the ring's colour
     */
    public void pulse(Vec2 mm, Color color) {
        Pulse.play(getChildren(), x(mm.x()), y(mm.y()), color);
    }

    /**
     * Draws everything anew, now if the surface is in sight, else when it comes in sight: a canvas that nobody sees would pile up what
     * is drawn on it.
     */
    public void repaint() {
        stale = true;
        repaintIfStale();
    }

    private void repaintIfStale() {
        if (stale && inSight()) {
            stale = false;
            painter.run();
            mover.ifPresent(this::moved);
        }
    }

    /** Draws what moves anew; what stands still stays. */
    public void move() {
        if (!stale && inSight()) {
            mover.ifPresent(this::moved);
        } else {
            repaint();
        }
    }

    private void moved(Runnable draw) {
        canvas = top;
        graphics().clearRect(0, 0, getWidth(), getHeight());
        graphics().setFont(Font.font(TEXT_PX));
        draw.run();
        canvas = ground;
    }

    /** A hidden view of a window stays in its scene, invisible. */
    private boolean inSight() {
        boolean sized = getScene() != null && getWidth() > 0 && getHeight() > 0;
        return sized && Stream.iterate((Node) this, Objects::nonNull, Node::getParent).allMatch(Node::isVisible);
    }

    /**
     * Draws every surface under a node that has come in sight and is not up to date.
     *
     * @param root the node
     */
    public static void refresh(Node root) {
        if (root instanceof Sketch sketch) {
            sketch.repaintIfStale();
        } else if (root instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(Sketch::refresh);
        }
    }
}
