package org.capwright.stock;

/**
 * Something to weld or seal.
 *
 * @param name what is joined
 * @param quantity how many times
 * @param lengthMm length of one
 * @param note how
 * @param kind what kind of joint it is
 * @param spots spot welds of one, where it is spot-welded; else 0
 * @param sealed whether it is sealed besides
 */
public record JoinItem(String name, int quantity, double lengthMm, String note, JoinKind kind, int spots, boolean sealed) {
    /** A welded joint. */
    static JoinItem weld(String name, int quantity, double lengthMm, String note, JoinKind kind) {
        return new JoinItem(name, quantity, lengthMm, note, kind, 0, false);
    }

    /**
     * Length of all of them.
     *
     * @return mm
     */
    public double totalMm() {
        return quantity * lengthMm;
    }
}
