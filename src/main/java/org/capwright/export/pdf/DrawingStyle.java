package org.capwright.export.pdf;

/**
 * The one style of all drawings. Followed: line types and the 2:1 ratio of wide and narrow lines after ISO 128-2 (wide 0.35
 * mm, its group for small sheets); dimension lines, filled arrowheads of 15 degrees, extension lines that pass the dimension
 * line, values over their line and readable from below or from the right after ISO 129-1; height of letters 2.5 mm after
 * ISO 3098-1; part references in a column beside the view after ISO 6433. Values are from memory of these standards' usual
 * practice; nothing here claims conformity.
 */
final class DrawingStyle {
    /** Wide line: visible outlines, cut lines. */
    static final double WIDE_MM = 0.35;
    /** Narrow line: half as wide. */
    static final double NARROW_MM = 0.18;
    /** Grey of leaders and extension lines, 0 black. */
    static final float PALE = 0.35f;
    /** Height of capitals in dimensions and references. */
    static final double TEXT_MM = 2.5;
    /** Length of an arrowhead; its two sides make 15 degrees. */
    static final double ARROW_MM = 2.6;
    /** Half of an arrowhead's width at its end. */
    static final double ARROW_HALF_MM = ARROW_MM * Math.tan(Math.toRadians(7.5));
    /** How far extension lines pass the dimension line. */
    static final double PASS_MM = 1.5;
    /** Gap between outline and extension line. */
    static final double GAP_MM = 1;
    /** Distance of the first dimension line from the view. */
    static final double FIRST_MM = 9;
    /** Distance between dimension lines. */
    static final double TIER_MM = 6.5;
    /** Distance of a value over its line. */
    static final double OVER_MM = 0.8;
    /** Distance between rows of references. */
    static final double ROW_MM = 5.2;

    private DrawingStyle() {
    }
}
