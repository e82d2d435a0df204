package org.capwright.export.dxf;

import java.io.IOException;
import java.util.List;
import org.capwright.drawing.Layer;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** What stands before the entities: release, unit, extent, line types, layers, a text style. */
final class DxfTables {
    private static final String SOLID = "CONTINUOUS";
    private static final String BEND_LINE = "BENDLINE";
    /** Dash, gap, dot, gap of a bend line, mm: the long-dashed dotted line of ISO 128-2. */
    private static final List<Double> BEND_DASHES = List.of(6.0, -2.0, 0.0, -2.0);

    private final DxfOutput out;

    private DxfTables(DxfOutput out) {
        this.out = out;
    }

    static void write(DxfOutput out, Bounds bounds, DxfUnit unit) throws IOException {
        DxfTables tables = new DxfTables(out);
        tables.header(bounds, unit);
        out.pair(0, "SECTION");
        out.pair(2, "TABLES");
        tables.lineTypes();
        tables.layers();
        tables.style();
        out.pair(0, "ENDSEC");
    }

    private void header(Bounds bounds, DxfUnit unit) throws IOException {
        out.pair(0, "SECTION");
        out.pair(2, "HEADER");
        out.pair(9, "$ACADVER");
        out.pair(1, "AC1009");
        out.pair(9, "$INSUNITS");
        out.pair(70, unit.code());
        out.pair(9, "$EXTMIN");
        out.point(10, new Vec2(bounds.minX(), bounds.minY()));
        out.pair(9, "$EXTMAX");
        out.point(10, new Vec2(bounds.maxX(), bounds.maxY()));
        out.pair(0, "ENDSEC");
    }

    private void lineTypes() throws IOException {
        table("LTYPE", 2);
        lineType(SOLID, "cut and mark", List.of());
        lineType(BEND_LINE, "middle of a bend", BEND_DASHES);
        out.pair(0, "ENDTAB");
    }

    private void lineType(String name, String words, List<Double> dashesMm) throws IOException {
        out.pair(0, "LTYPE");
        out.pair(2, name);
        out.pair(70, 0);
        out.pair(3, words);
        out.pair(72, 65);
        out.pair(73, dashesMm.size());
        out.length(40, dashesMm.stream().mapToDouble(Math::abs).sum());
        for (double dash : dashesMm) {
            out.length(49, dash);
        }
    }

    private void layers() throws IOException {
        table("LAYER", Layer.values().length + 1);
        layer("0", 7, SOLID);
        for (Layer layer : Layer.values()) {
            layer(layer.name(), color(layer), layer == Layer.BEND ? BEND_LINE : SOLID);
        }
        out.pair(0, "ENDTAB");
    }

    private void layer(String name, int color, String lineType) throws IOException {
        out.pair(0, "LAYER");
        out.pair(2, name);
        out.pair(70, 0);
        out.pair(62, color);
        out.pair(6, lineType);
    }

    /** Index colours of DXF: 7 black or white, 5 blue, 3 green, 8 grey. */
    private static int color(Layer layer) {
        return switch (layer) {
            case CUT -> 7;
            case BEND -> 5;
            case MARK -> 3;
            case TEXT -> 8;
        };
    }

    private void style() throws IOException {
        table("STYLE", 1);
        out.pair(0, "STYLE");
        out.pair(2, "STANDARD");
        out.pair(70, 0);
        out.number(40, 0);
        out.number(41, 1);
        out.number(50, 0);
        out.pair(71, 0);
        out.number(42, 2.5);
        out.pair(3, "txt");
        out.pair(4, "");
        out.pair(0, "ENDTAB");
    }

    private void table(String name, int entries) throws IOException {
        out.pair(0, "TABLE");
        out.pair(2, name);
        out.pair(70, entries);
    }
}
