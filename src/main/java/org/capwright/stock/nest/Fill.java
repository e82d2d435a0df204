package org.capwright.stock.nest;

import java.util.List;

/** A sheet being filled, piece by piece. */
interface Fill {
    /**
     * A piece put down.
     *
     * @param demand which demand it is of
     * @param form its turn
     * @param x left of its grown bounds, from the left of the usable area
     * @param y bottom of its grown bounds
     */
    record Put(int demand, Form form, double x, double y) {
    }

    /** Begins an empty sheet. */
    @FunctionalInterface
    interface Maker {
        /** An empty sheet of a size. */
        Fill begin(SheetSize size);
    }

    /** Which sheet. */
    SheetSize size();

    /** Puts a piece down where it fits best; false where it fits nowhere, then nothing changes. */
    boolean add(int demand);

    /** What was put down. */
    List<Put> puts();
}
