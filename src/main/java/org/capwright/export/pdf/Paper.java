package org.capwright.export.pdf;

import org.capwright.units.UnitSystem;

/**
 * Sizes of paper: letter, legal and tabloid (ANSI/ASME Y14.1 A, legal, B), A4 and A3 (ISO 216), or one page as large as
 * the part.
 */
public enum Paper {
    /** 8.5 x 11 in. */
    LETTER(215.9, 279.4),
    /** 8.5 x 14 in. */
    LEGAL(215.9, 355.6),
    /** 11 x 17 in. */
    TABLOID(279.4, 431.8),
    /** 210 x 297 mm. */
    A4(210, 297),
    /** 297 x 420 mm. */
    A3(297, 420),
    /** One page for each part, as large as it needs; lists are on letter size. */
    ONE(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /**
     * The usual paper of those who measure so.
     *
     * @param system the unit system
     * @return letter or A4
     */
    public static Paper of(UnitSystem system) {
        return system == UnitSystem.INCH ? LETTER : A4;
    }

    /**
     * Its shorter side.
     *
     * @return mm
     */
    public double widthMm() {
        return widthMm;
    }

    /**
     * Its longer side.
     *
     * @return mm
     */
    public double heightMm() {
        return heightMm;
    }
}
