package org.capwright.check;

import java.util.Optional;
import org.capwright.geom.Vec3;
import org.capwright.units.ShopFormat;

/**
 * A check and what came of it.
 *
 * @param id its name, such as {@code leaf.1.hood}
 * @param words its name for people, such as {@code leaf 1 to hood}
 * @param quantity what it measures
 * @param value what was found, in the core's unit
 * @param limit what is asked for
 * @param place where and at which opening, if it has a place
 * @param estimate whether the value is an estimate
 */
public record Check(String id, String words, Quantity quantity, double value, Limit limit, Optional<Place> place,
                    boolean estimate) {
    /**
     * A place and an opening.
     *
     * @param at the place
     * @param openRad the opening
     */
    public record Place(Vec3 at, double openRad) {
    }

    /** A check without a place. */
    static Check of(String id, String words, Quantity quantity, double value, Limit limit) {
        return new Check(id, words, quantity, value, limit, Optional.empty(), false);
    }

    /** The same, of an estimated value. */
    static Check estimate(String id, String words, Quantity quantity, double value, Limit limit) {
        return new Check(id, words, quantity, value, limit, Optional.empty(), true);
    }

    /**
     * The verdict.
     *
     * @return clear, tight or foul
     */
    public Verdict verdict() {
        return limit.verdict(value);
    }

    /**
     * How far it is on the good side of its limit.
     *
     * @return in the core's unit, negative where it fails
     */
    public double margin() {
        return limit.margin(value);
    }

    /**
     * What it is, why it matters and how to measure it, in plain words.
     *
     * @return one or two sentences
     */
    public String explanation() {
        return Explanations.of(id);
    }

    /**
     * The check in one line.
     *
     * @param format how numbers are printed
     * @return such as {@code heel 1 to gutter wall 3/32 in, at least 1/16 in}
     */
    public String line(ShopFormat format) {
        return words + " " + quantity.words(value, format) + (estimate ? " (estimate)" : "") + ", "
                + (limit.least() ? "at least " : "at most ") + quantity.words(limit.value(), format);
    }
}
