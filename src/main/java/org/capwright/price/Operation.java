package org.capwright.price;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.capwright.stock.Work;

/** What the shop is paid to do, and how much of it a cap needs. */
public enum Operation {
    /** Cutting outlines and holes. */
    CUT("cutting", "m", Work::cutM),
    /** Taking up, marking and cleaning blanks. */
    HANDLE("marking and cleaning blanks", "blanks", Work::blanks),
    /** Straight bends. */
    BEND("bending", "bends", Work::bends),
    /** Rolling cylinders. */
    ROLL("rolling", "pieces", Work::rolls),
    /** Rolling beads. */
    BEAD("beading", "m", Work::beadM),
    /** Crimping and shrinking curved flanges. */
    CRIMP("shrinking flanges", "passes", Work::crimpPasses),
    /** Drilling and riveting. */
    RIVET("riveting", "rivets", Work::rivets),
    /** Butt welds. */
    BUTT("butt welding", "m", Work::buttM),
    /** Fillet welds. */
    FILLET("fillet welding", "m", Work::filletM),
    /** Stitch welds. */
    STITCH("stitch welding", "m", Work::stitchM),
    /** Spot welds. */
    SPOT("spot welding", "spots", Work::spots),
    /** Grooved locks. */
    LOCK("grooved locks", "m", Work::lockM),
    /** Laying sealant. */
    SEAL("sealing", "m", Work::sealM),
    /** Cutting bars off. */
    SAW("cutting bars", "cuts", Work::barCuts),
    /** Putting a cap together and trying it. */
    ASSEMBLE("assembly and trial fit", "caps", work -> 1);

    private final String words;
    private final String unit;
    private final ToDoubleFunction<Work> quantity;

    Operation(String words, String unit, ToDoubleFunction<Work> quantity) {
        this.words = words;
        this.unit = unit;
        this.quantity = quantity;
    }

    /**
     * What people call it.
     *
     * @return such as {@code bending}
     */
    public String words() {
        return words;
    }

    /**
     * What it is counted in.
     *
     * @return such as {@code m}
     */
    public String unit() {
        return unit;
    }

    /**
     * Its word in rate cards.
     *
     * @return such as {@code bend}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * How much of it there is.
     *
     * @param work the work of a cap
     * @return the quantity, in its unit
     */
    public double of(Work work) {
        return quantity.applyAsDouble(work);
    }
}
