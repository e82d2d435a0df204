package org.capwright.export.dxf;

import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/** The unit of a DXF file's numbers. */
public enum DxfUnit {
    /** Millimetres. */
    MM(4, 1, "mm"),
    /** Inches. */
    IN(1, Length.MM_PER_INCH, "in");

    private final int code;
    private final double mm;
    private final String word;

    DxfUnit(int code, double mm, String word) {
        this.code = code;
        this.mm = mm;
        this.word = word;
    }

    /**
     * The unit in which a shop writes.
     *
     * @param system the shop's units
     * @return inches or millimetres
     */
    public static DxfUnit of(UnitSystem system) {
        return system == UnitSystem.INCH ? IN : MM;
    }

    /** Its number in {@code $INSUNITS} (DXF reference, header variables: 1 inches, 4 millimetres). */
    int code() {
        return code;
    }

    /** A length in this unit. */
    double of(double lengthMm) {
        return lengthMm / mm;
    }

    /** Its abbreviation. */
    String word() {
        return word;
    }
}
