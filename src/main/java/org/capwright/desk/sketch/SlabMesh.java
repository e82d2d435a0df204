package org.capwright.desk.sketch;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import org.capwright.geom.Vec2;

/** Meshes of things that are a plane outline pulled up: plates, bars, tubes. Screen axes: x across, y down, z away. */
public final class SlabMesh {
    private final TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_TEXCOORD);

    private SlabMesh() {
        mesh.getTexCoords().addAll(0, 0);
    }

    /**
     * A closed strip between two heights: a wall along an outline, open above and below.
     *
     * @param outline its corners
     * @param low its foot, mm
     * @param high its top, mm
     * @return the mesh
     */
    public static MeshView wall(List<Vec2> outline, double low, double high) {
        SlabMesh slab = new SlabMesh();
        for (int i = 0; i < outline.size(); i++) {
            Vec2 a = outline.get(i);
            Vec2 b = outline.get((i + 1) % outline.size());
            slab.quad(a, b, low, high);
        }
        return slab.view();
    }

    /**
     * A plate with flat faces.
     *
     * @param outline its corners, all seen from its middle
     * @param low its underside, mm
     * @param high its top, mm
     * @return the mesh
     */
    public static MeshView plate(List<Vec2> outline, double low, double high) {
        SlabMesh slab = new SlabMesh();
        for (int i = 0; i < outline.size(); i++) {
            slab.quad(outline.get(i), outline.get((i + 1) % outline.size()), low, high);
        }
        Vec2 middle = outline.stream().reduce(Vec2.ZERO, Vec2::plus).times(1.0 / outline.size());
        for (double z : new double[] {low, high}) {
            for (int i = 0; i < outline.size(); i++) {
                slab.triangle(middle, outline.get(i), outline.get((i + 1) % outline.size()), z);
            }
        }
        return slab.view();
    }

    /**
     * A ring wall with thickness.
     *
     * @param inside its inside radius, mm
     * @param outside its outside radius, mm
     * @param low its foot, mm
     * @param high its top, mm
     * @param steps how many flats make the round
     * @return the mesh
     */
    public static MeshView tube(double inside, double outside, double low, double high, int steps) {
        SlabMesh slab = new SlabMesh();
        for (int i = 0; i < steps; i++) {
            double from = 2 * Math.PI * i / steps;
            double to = 2 * Math.PI * (i + 1) / steps;
            slab.quad(Vec2.polar(outside, from), Vec2.polar(outside, to), low, high);
            slab.quad(Vec2.polar(inside, from), Vec2.polar(inside, to), low, high);
            for (double z : new double[] {low, high}) {
                slab.triangle(Vec2.polar(inside, from), Vec2.polar(outside, from), Vec2.polar(outside, to), z);
                slab.triangle(Vec2.polar(inside, from), Vec2.polar(outside, to), Vec2.polar(inside, to), z);
            }
        }
        return slab.view();
    }

    /**
     * A box as an outline.
     *
     * @param x1 x of a corner, mm
     * @param y1 y of a corner, mm
     * @param x2 x of the corner across, mm
     * @param y2 y of the corner across, mm
     * @return its corners
     */
    public static List<Vec2> box(double x1, double y1, double x2, double y2) {
        return new ArrayList<>(List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2)));
    }

    private void quad(Vec2 a, Vec2 b, double low, double high) {
        int first = point(a, low);
        point(b, low);
        point(b, high);
        point(a, high);
        face(first, first + 1, first + 2);
        face(first, first + 2, first + 3);
    }

    private void triangle(Vec2 a, Vec2 b, Vec2 c, double z) {
        int first = point(a, z);
        point(b, z);
        point(c, z);
        face(first, first + 1, first + 2);
    }

    private int point(Vec2 p, double z) {
        mesh.getPoints().addAll((float) p.x(), (float) -z, (float) p.y());
        return mesh.getPoints().size() / 3 - 1;
    }

    private void face(int a, int b, int c) {
        mesh.getFaces().addAll(a, 0, b, 0, c, 0);
    }

    private MeshView view() {
        MeshView view = new MeshView(mesh);
        view.setCullFace(CullFace.NONE);
        return view;
    }
}
