package org.capwright.blank;

import org.capwright.drawing.Label;
import org.capwright.geom.Vec2;
import org.capwright.job.CapJob;
import org.capwright.job.JobInputs;
import org.capwright.metal.Bend;
import org.capwright.part.Cap;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * What is written on blanks, in the job's units.
 *
 * @param format how numbers are printed
 */
public record Writing(ShopFormat format) {
    /** Height of capitals on true-size paper. */
    public static final double TEXT_MM = 2.4;
    /** Distance of writing from the line it belongs to. */
    static final double CLEAR_MM = 1.6;
    /** Half the size of the crosses at hole centres. */
    static final double CROSS_MM = 3;

    /**
     * The writing of a cap's job.
     *
     * @param cap the cap
     * @return how to write on its blanks
     */
    public static Writing of(Cap cap) {
        return of(cap.job());
    }

    /**
     * The writing of a job.
     *
     * @param job the job
     * @return how to write on its blanks
     */
    public static Writing of(CapJob job) {
        return new Writing(new ShopFormat(job.get(JobInputs.UNITS), job.get(JobInputs.FRACTION)));
    }

    String length(double mm) {
        return format.length(Length.ofMm(mm));
    }

    String bend(Bend bend, String direction) {
        return "bend " + direction + " " + format.angle(Angle.ofRad(bend.turnRad())) + ", inside radius "
                + format.thickness(Length.ofMm(bend.insideRadiusMm()));
    }

    /** A label that reads along x, its middle at a point. */
    static Label across(Vec2 at, String text) {
        return new Label(at, text, TEXT_MM, 0, Label.Anchor.MIDDLE);
    }

    /** A label that reads along x and begins at a point. */
    static Label from(Vec2 at, String text) {
        return new Label(at, text, TEXT_MM, 0, Label.Anchor.START);
    }

    /** A label that reads upwards, its middle at a point. */
    static Label up(Vec2 at, String text) {
        return new Label(at, text, TEXT_MM, Math.PI / 2, Label.Anchor.MIDDLE);
    }
}
