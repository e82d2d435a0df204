package org.capwright.desk.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Insets;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.PerspectiveCamera;
import javafx.scene.PointLight;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.session.Watched;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.SlabMesh;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.StopBar;

/** The cap in the round, turned with the mouse; leaves at the same opening as everywhere. */
final class RoundView extends BorderPane implements Watched {
    private static final int STEPS = 96;
    private static final double HOOD_OPACITY = 0.32;
    private static final int ARC_STEPS = 36;

    private final Session session;
    private final Attention attention;
    private final ObjectProperty<Palette> palette;
    private final Group cap = new Group();
    private final Map<String, Group> parts = new LinkedHashMap<>();
    private final Map<Rotate, Integer> leafTurns = new LinkedHashMap<>();
    private final FlowPane boxes = new FlowPane(12, 4);
    private final Rotate tilt = new Rotate(24, Rotate.X_AXIS);
    private final Rotate spin = new Rotate(30, Rotate.Y_AXIS);
    private final Translate away = new Translate(0, 0, -1600);
    private boolean shown;
    private boolean stale;
    private double lastX;
    private double lastY;

    RoundView(Session session, Attention attention, ObjectProperty<Palette> palette) {
        this.session = session;
        this.attention = attention;
        this.palette = palette;
        if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
            Label none = new Label("This machine shows no 3-D. Everything else works: see Swing for section and plan.");
            none.setPadding(new Insets(30));
            setCenter(none);
            return;
        }
        boxes.setPadding(new Insets(5, 10, 5, 10));
        setCenter(stage());
        setBottom(boxes);
        session.solvedProperty().addListener((o, was, is) -> build());
        palette.addListener((o, was, is) -> build());
        attention.openRadProperty().addListener((o, was, is) -> turn());
        build();
    }

    private Pane stage() {
        cap.getTransforms().addAll(tilt, spin);
        PointLight light = new PointLight(Color.gray(0.75));
        light.getTransforms().add(new Translate(-900, -1500, -1500));
        Group world = new Group(cap, light, new AmbientLight(Color.gray(0.45)));
        SubScene scene = new SubScene(world, 400, 300, true, SceneAntialiasing.BALANCED);
        PerspectiveCamera camera = new PerspectiveCamera(true);
        camera.setFarClip(20000);
        camera.setNearClip(1);
        camera.setFieldOfView(28);
        camera.getTransforms().add(away);
        scene.setCamera(camera);
        Pane pane = new Pane(scene);
        pane.setAccessibleText("The cap in the round. Drag to turn it, wheel to come nearer.");
        pane.getStyleClass().add("paper");
        scene.widthProperty().bind(pane.widthProperty());
        scene.heightProperty().bind(pane.heightProperty());
        pane.setOnMousePressed(event -> {
            lastX = event.getX();
            lastY = event.getY();
        });
        pane.setOnMouseDragged(event -> {
            spin.setAngle(spin.getAngle() - (event.getX() - lastX) * 0.4);
            tilt.setAngle(Math.max(-30, Math.min(90, tilt.getAngle() - (event.getY() - lastY) * 0.4)));
            lastX = event.getX();
            lastY = event.getY();
        });
        pane.setOnScroll(event -> away.setZ(away.getZ() * Math.exp(-event.getDeltaY() / 600)));
        return pane;
    }

    @Override
    public void setWatched(boolean now) {
        shown = now;
        if (stale) {
            build();
        }
    }

    private void build() {
        Solved solved = session.solvedProperty().get();
        stale = !shown;
        if (solved == null || !shown || !Platform.isSupported(ConditionalFeature.SCENE3D)) {
            return;
        }
        Cap now = solved.cap();
        cap.getChildren().clear();
        leafTurns.clear();
        parts.clear();
        Color fill = palette.get().fill().interpolate(palette.get().quiet(), 0.35);
        part("sleeve", SlabMesh.tube(now.sleeve().insideRadiusMm(), now.sleeve().outsideRadiusMm(), -now.sleeve().heightMm(), 0,
                STEPS), fill);
        now.leaves().forEach(leaf -> leaf(now, leaf));
        now.gutters().forEach(gutter -> gutter(gutter, fill));
        now.stops().forEach(bar -> bar(bar, fill));
        standoffs(now, fill);
        now.doublers().forEach(plate -> doubler(now, plate, fill));
        // last, and clear enough to look through
        part("hood", SlabMesh.tube(now.hood().insideRadiusMm(), now.hood().outsideRadiusMm(), -now.hood().belowRimMm(),
                now.hood().aboveRimMm(), STEPS), fill.deriveColor(0, 1, 1, HOOD_OPACITY));
        double size = Math.max(now.widthMm(), now.heightMm());
        away.setZ(-2.9 * size);
        cap.getChildren().setAll(parts.values());
        boxes();
        turn();
    }

    private void boxes() {
        Map<String, Boolean> shown = new LinkedHashMap<>();
        boxes.getChildren().forEach(node -> shown.put(((CheckBox) node).getText(), ((CheckBox) node).isSelected()));
        boxes.getChildren().clear();
        parts.forEach((name, group) -> {
            CheckBox box = new CheckBox(name);
            box.setSelected(shown.getOrDefault(name, true));
            group.visibleProperty().bind(box.selectedProperty());
            boxes.getChildren().add(box);
        });
    }

    private void part(String name, MeshView mesh, Color color) {
        mesh.setMaterial(new PhongMaterial(color));
        parts.computeIfAbsent(name, n -> new Group()).getChildren().add(mesh);
    }

    private void turn() {
        double degrees = Math.toDegrees(attention.openRadProperty().get());
        leafTurns.forEach((rotate, side) -> rotate.setAngle(-side * degrees));
    }

    private void leaf(Cap now, Leaf leaf) {
        List<Vec2> outline = new ArrayList<>();
        double radius = leaf.slab().radiusMm();
        double from = leaf.slab().hingeAzimuthRad();
        double to = leaf.slab().freeAzimuthRad();
        for (int i = 0; i <= ARC_STEPS; i++) {
            outline.add(Vec2.polar(radius, -from + (from - to) * i / ARC_STEPS));
        }
        for (int i = 0; i <= ARC_STEPS; i++) {
            outline.add(Vec2.polar(radius, to + (from - to) * i / ARC_STEPS));
        }
        double t = leaf.sheet().thicknessMm();
        PivotRod rod = now.rods().get(leaf.number() - 1);
        for (int side : new int[] {1, -1}) {
            Group group = new Group();
            List<Vec2> mine = outline.stream().map(p -> new Vec2(side * p.x(), p.y())).toList();
            add(group, SlabMesh.plate(mine, 0, t), palette.get().leaf());
            add(group, SlabMesh.wall(mine, t - leaf.curveFlangeMm(), t), palette.get().leaf());
            double half = rod.diameterMm() / 2;
            add(group, SlabMesh.plate(SlabMesh.box(side * rod.axisMm() - half, -rod.lengthMm() / 2, side * rod.axisMm() + half,
                    rod.lengthMm() / 2), rod.axisZMm() - half, rod.axisZMm() + half), palette.get().quiet());
            Rotate turn = new Rotate(0, side * rod.axisMm(), -rod.axisZMm(), 0, Rotate.Z_AXIS);
            group.getTransforms().add(turn);
            leafTurns.put(turn, side);
            parts.computeIfAbsent("leaves", n -> new Group()).getChildren().add(group);
        }
    }

    private static void add(Group group, MeshView mesh, Color color) {
        mesh.setMaterial(new PhongMaterial(color));
        group.getChildren().add(mesh);
    }

    private void gutter(Gutter gutter, Color fill) {
        double half = gutter.outsideWidthMm() / 2;
        double t = gutter.sheet().thicknessMm();
        double end = gutter.endMm(0);
        for (int side : gutter.jointMm() == 0 ? new int[] {1} : new int[] {1, -1}) {
            double x = side * gutter.jointMm();
            part("gutters", SlabMesh.plate(SlabMesh.box(x - half, -end, x + half, end), -gutter.outsideDepthMm(),
                    -gutter.depthMm()), fill);
            part("gutters", SlabMesh.plate(SlabMesh.box(x - half, -end, x - half + t, end), -gutter.outsideDepthMm(), 0), fill);
            part("gutters", SlabMesh.plate(SlabMesh.box(x + half - t, -end, x + half, end), -gutter.outsideDepthMm(), 0), fill);
        }
    }

    private void bar(StopBar bar, Color fill) {
        double half = bar.halfWidthMm();
        double t = bar.sheet().thicknessMm();
        double end = bar.endMm(0);
        double top = bar.cornerZMm() + bar.depthMm();
        for (int side : bar.jointMm() == 0 ? new int[] {1} : new int[] {1, -1}) {
            double x = side * bar.jointMm();
            part("stop bars", SlabMesh.plate(SlabMesh.box(x - half, -end, x + half, end), top - t, top), fill);
            part("stop bars", SlabMesh.plate(SlabMesh.box(x - half, -end, x - half + t, end), bar.cornerZMm(), top), fill);
            part("stop bars", SlabMesh.plate(SlabMesh.box(x + half - t, -end, x + half, end), bar.cornerZMm(), top), fill);
        }
    }

    private void standoffs(Cap now, Color fill) {
        double top = now.standoff().topZMm();
        for (int i = 0; i < now.standoff().count(); i++) {
            double azimuth = now.standoff().azimuthRad(i) - now.standoff().outerHalfRad();
            Vec2 across = Vec2.polar(now.standoff().sheet().thicknessMm(), azimuth + Math.PI / 2);
            Vec2 in = Vec2.polar(now.sleeve().outsideRadiusMm(), azimuth);
            Vec2 out = Vec2.polar(now.hood().insideRadiusMm(), azimuth);
            part("standoffs", SlabMesh.plate(List.of(in, out, out.plus(across), in.plus(across)), top - now.standoff().heightMm(),
                    top), fill);
        }
    }

    private void doubler(Cap now, Doubler plate, Color fill) {
        double z = now.rods().get(plate.number() - 1).axisZMm();
        for (int side : plate.number() == 1 ? new int[] {1} : new int[] {1, -1}) {
            for (int end : new int[] {1, -1}) {
                double y = end * plate.faceYMm();
                part("doublers", SlabMesh.plate(SlabMesh.box(side * plate.fromMm(), y, side * plate.toMm(), y
                        + end * plate.thicknessMm()),
                        z - plate.heightMm() / 2, z + plate.heightMm() / 2), fill);
            }
        }
    }
}
