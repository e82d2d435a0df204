package org.capwright.export.pdf;

import java.io.IOException;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.layout.View;

/** A column of references beside a view, each with a leader to its place; long ones on several lines. */
final class NoteColumn {
    private static final double LEADER_MM = 10;
    private static final double SHOULDER_MM = 1;
    private static final double DOT_MM = 0.5;
    private static final double WIDEST_MM = 48;
    /** How close to a column lines of the drawing matter. */
    private static final double AROUND_MM = 2;

    private final Canvas canvas;
    private final Bounds area;
    private final double x;
    private final boolean right;
    private final List<Note> notes;

    /** A column right or left of a view. */
    NoteColumn(Canvas canvas, Placement placement, Bounds area, View view, boolean right) {
        this.canvas = canvas;
        this.area = area;
        this.right = right;
        Bounds outline = placement.apply(view.bounds());
        this.x = right ? outline.maxX() + LEADER_MM : outline.minX() - LEADER_MM;
        this.notes = of(view, right).stream().map(note -> new Note(placement.apply(note.at()), lines(canvas.typeface(), note)))
                .toList();
    }

    /** The references on a side: on the left those of places left of the middle, where no dimensions stand there. */
    private static List<View.Note> of(View view, boolean right) {
        boolean both = view.spans().stream().noneMatch(span -> span.side() == View.Side.LEFT);
        double middle = view.bounds().center().x();
        return view.notes().stream().filter(note -> right == (!both || note.at().x() >= middle - 1e-6)).toList();
    }

    private static List<String> lines(Typeface typeface, View.Note note) {
        return LineBreaks.of(typeface, DrawingStyle.TEXT_MM, note.words(), WIDEST_MM);
    }

    /** Width of the column with its leaders, 0 where it is empty. */
    static double widthMm(View view, boolean right, Typeface typeface) {
        return of(view, right).stream().flatMap(note -> lines(typeface, note).stream())
                .mapToDouble(line -> typeface.widthMm(DrawingStyle.TEXT_MM, line) + LEADER_MM + 2).max().orElse(0);
    }

    void paint() throws IOException {
        double tallest = notes.stream().mapToDouble(Note::heightMm).max().orElse(0);
        double[] heights = new NotePlacing(notes, end(), area.minY() + tallest / 2, area.maxY() - tallest / 2,
                canvas.ink().near(area.grown(AROUND_MM), Vec2.ZERO, 0)).heights();
        for (int i = 0; i < notes.size(); i++) {
            paint(notes.get(i), heights[i]);
        }
    }

    private double end() {
        return right ? x - SHOULDER_MM : x + SHOULDER_MM;
    }

    private void paint(Note note, double middle) throws IOException {
        canvas.pen(DrawingStyle.NARROW_MM / 2, DrawingStyle.PALE);
        canvas.line(note.at().x(), note.at().y(), end(), middle);
        canvas.dot(note.at(), DOT_MM);
        for (int i = 0; i < note.lines().size(); i++) {
            double y = note.baseline(middle, i);
            if (right) {
                canvas.text(x, y, DrawingStyle.TEXT_MM, note.lines().get(i));
            } else {
                canvas.textEnding(x, y, DrawingStyle.TEXT_MM, note.lines().get(i));
            }
        }
    }
}
