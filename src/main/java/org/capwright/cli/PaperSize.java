package org.capwright.cli;

/**
 * Sizes of paper: letter, legal and tabloid (ANSI/ASME Y14.1 A and B), A4 and A3 (ISO 216).
 */
enum PaperSize {
    /** 8.5 x 11 in. */
    LETTER,
    /** 8.5 x 14 in. */
    LEGAL,
    /** 11 x 17 in. */
    TABLOID,
    /** 210 x 297 mm. */
    A4,
    /** 297 x 420 mm. */
    A3
}
