package org.capwright.metal;

import java.util.Locale;

/** How a cylinder is closed. */
public enum SeamKind {
    /** Edge to edge, welded. */
    BUTT,
    /** One edge over the other. */
    LAP,
    /** Hooked edges, grooved together. */
    LOCK;

    /**
     * The word that job files use.
     *
     * @return such as {@code lap}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
