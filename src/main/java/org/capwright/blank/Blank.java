package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Layer;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.part.Sheet;

/**
 * The flat pattern of a part.
 *
 * @param id short name for files, such as {@code leaf-1}
 * @param name name for people, such as {@code leaf 1}
 * @param quantity how many to cut
 * @param sheet what to cut it from
 * @param detailsOnly whether it is long and plain, so that only its details are worth printing at true size
 * @param drawing the pattern; its first cut line is the outline
 * @param faceUp which face is up, such as {@code outside face up}
 * @param grain how it lies to the grain
 * @param details windows on the pattern that matter at true size, where the whole is too long to print
 * @param notes what else the shop must know
 */
public record Blank(String id, String name, int quantity, Sheet sheet, boolean detailsOnly, Drawing drawing, String faceUp,
                    Grain grain, List<Detail> details, List<String> notes) {
    /** Keeps its own copies. */
    public Blank {
        details = List.copyOf(details);
        notes = List.copyOf(notes);
    }

    /**
     * A window on a pattern.
     *
     * @param name what is in it; windows of one blank with the same name look alike
     * @param middleMm station of its middle
     * @param window its part of the drawing
     */
    public record Detail(String name, double middleMm, Bounds window) {
    }

    /**
     * The outline.
     *
     * @return a closed path
     */
    public Path outline() {
        return drawing.paths(Layer.CUT).get(0);
    }

    /**
     * The holes.
     *
     * @return closed paths within the outline
     */
    public List<Path> holes() {
        List<Path> cuts = drawing.paths(Layer.CUT);
        return cuts.subList(1, cuts.size());
    }

    /**
     * Area of the sheet that is left.
     *
     * @return outline less holes, mm2
     */
    public double areaMm2() {
        return Math.abs(outline().area()) - holes().stream().mapToDouble(hole -> Math.abs(hole.area())).sum();
    }

    /**
     * Mass of one.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(areaMm2());
    }

    /**
     * Its size along x.
     *
     * @return mm
     */
    public double lengthMm() {
        return outline().bounds().width();
    }

    /**
     * Its size along y.
     *
     * @return mm
     */
    public double widthMm() {
        return outline().bounds().height();
    }
}
