package org.capwright.export.dxf;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.drawing.Layer;
import org.capwright.export.JobTag;
import org.capwright.export.Sheets;
import org.capwright.geom.Bounds;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.units.ShopFormat;

/** Writes a drawing as DXF at true size. Outlines run end to end; what they are cut from stands below them. */
public final class DxfFile {
    private static final double TITLE_MM = 4;
    private static final double LINE_MM = 7;
    private static final double BELOW_MM = 12;
    private static final double FULL_TURN = 2 * Math.PI - 1e-9;

    private final DxfOutput out;

    private DxfFile(DxfOutput out) {
        this.out = out;
    }

    /**
     * Writes a blank.
     *
     * @param file where to
     * @param blank the blank
     * @param tag its job
     * @param format how numbers are printed
     * @param unit the unit of the file's numbers
     * @throws IOException if the file can't be written
     */
    public static void write(Path file, Blank blank, JobTag tag, ShopFormat format, DxfUnit unit) throws IOException {
        List<String> titles = List.of(blank.name() + ", cut " + blank.quantity() + " from " + Sheets.name(blank.sheet(), format),
                blank.faceUp() + ", " + blank.grain().words());
        write(file, blank.drawing(), titles, tag, unit);
    }

    /**
     * Writes a drawing.
     *
     * @param file where to
     * @param drawing the drawing; in closed cut lines it holds outlines and the holes in them
     * @param titles what to write below it
     * @param tag its job
     * @param unit the unit of the file's numbers
     * @throws IOException if the file can't be written
     */
    public static void write(Path file, Drawing drawing, List<String> titles, JobTag tag, DxfUnit unit) throws IOException {
        try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            DxfOutput out = new DxfOutput(writer, unit);
            out.comment("Capwright: " + drawing.name() + ", in " + unit.word());
            out.comment(tag.line());
            for (String foul : tag.fouls()) {
                out.comment("FOUL: " + foul);
            }
            DxfTables.write(out, drawing.bounds(), unit);
            new DxfFile(out).entities(drawing, titles, tag, unit);
            out.pair(0, "EOF");
        }
    }

    private void entities(Drawing drawing, List<String> titles, JobTag tag, DxfUnit unit) throws IOException {
        out.pair(0, "SECTION");
        out.pair(2, "ENTITIES");
        for (Layer layer : Layer.values()) {
            for (org.capwright.geom.Path path : LinesOnce.of(drawing, layer)) {
                path(path, layer);
            }
        }
        for (Label label : drawing.labels()) {
            label(label);
        }
        titles(drawing.bounds(), titles, tag, unit);
        out.pair(0, "ENDSEC");
    }

    private void titles(Bounds bounds, List<String> titles, JobTag tag, DxfUnit unit) throws IOException {
        double y = bounds.minY() - BELOW_MM;
        for (String title : titles) {
            title(bounds.minX(), y, title);
            y -= LINE_MM;
        }
        title(bounds.minX(), y, tag.line() + ", unit " + unit.word());
        if (!tag.fouls().isEmpty()) {
            title(bounds.minX(), y - LINE_MM, "FOUL: " + String.join("; ", tag.fouls()));
        }
    }

    private void title(double x, double y, String text) throws IOException {
        label(new Label(new Vec2(x, y), text, TITLE_MM, 0, Label.Anchor.START));
    }

    private void path(org.capwright.geom.Path path, Layer layer) throws IOException {
        for (Segment segment : path.segments()) {
            if (segment instanceof Segment.Arc arc) {
                arc(arc, layer);
            } else {
                begin("LINE", layer);
                out.point(10, segment.from());
                out.point(11, segment.to());
            }
        }
    }

    /** Arcs always run counterclockwise in DXF. */
    private void arc(Segment.Arc arc, Layer layer) throws IOException {
        boolean circle = Math.abs(arc.sweepRad()) >= FULL_TURN;
        begin(circle ? "CIRCLE" : "ARC", layer);
        out.point(10, arc.center());
        out.length(40, arc.radius());
        if (!circle) {
            out.angle(50, Math.min(arc.startRad(), arc.startRad() + arc.sweepRad()));
            out.angle(51, Math.max(arc.startRad(), arc.startRad() + arc.sweepRad()));
        }
    }

    private void label(Label label) throws IOException {
        begin("TEXT", Layer.TEXT);
        out.point(10, label.at());
        out.length(40, label.heightMm());
        out.pair(1, label.text());
        out.number(50, Math.toDegrees(label.turnRad()));
        if (label.anchor() != Label.Anchor.START) {
            out.pair(72, label.anchor() == Label.Anchor.MIDDLE ? 1 : 2);
            out.point(11, label.at());
        }
    }

    private void begin(String entity, Layer layer) throws IOException {
        out.pair(0, entity);
        out.pair(8, layer.name());
    }
}
