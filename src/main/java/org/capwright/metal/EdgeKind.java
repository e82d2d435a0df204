package org.capwright.metal;

import java.util.Locale;

/** How a sheet's edge is finished. */
public enum EdgeKind {
    /** As cut. */
    PLAIN,
    /** Folded once. */
    HEM,
    /** Folded twice. */
    DOUBLE_HEM,
    /** Rolled round a wire. */
    WIRED;

    /**
     * The word that job files use.
     *
     * @return such as {@code double hem}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
