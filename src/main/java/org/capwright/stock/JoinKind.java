package org.capwright.stock;

import java.util.Locale;

/** How two edges are joined. */
public enum JoinKind {
    /** Butt weld along a seam. */
    BUTT,
    /** Fillet weld. */
    FILLET,
    /** Stitch weld. */
    STITCH,
    /** Spot welds in a lap. */
    SPOT,
    /** Grooved lock, without welding. */
    LOCK,
    /** Lap, riveted or welded as the shop likes. */
    LAP;

    /**
     * Its word.
     *
     * @return such as {@code butt}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
