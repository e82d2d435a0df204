package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Places dimensions in tiers beside a view, the short ones nearest, so that no value touches another or an extension line. It
 * works along one axis: everything is a distance on paper along the dimension lines.
 */
final class SpanTiers {
    private static final double CLEAR_MM = 1.2;
    /** Between values that stand beside their lines, one after the other: nearer, they would be read as one. */
    private static final double APART_MM = 7;
    private static final double ARROWS = 3 * DrawingStyle.ARROW_MM;
    private static final double TAIL_MM = DrawingStyle.ARROW_MM + 2.5;
    private static final int MOST_TIERS = 60;

    private final List<Placed> placed = new ArrayList<>();
    private final List<Wanted> waiting;
    private final double least;
    private final double most;

    /** A dimension to place: its ends and the width of its value. */
    record Wanted(int index, double from, double to, double textMm) {
        double length() {
            return to - from;
        }

        /** Too short for both arrowheads between its ends. */
        boolean tight() {
            return length() < ARROWS;
        }
    }

    /** A placed dimension: which tier, where its value begins, and from where to where its line runs. */
    record Placed(Wanted wanted, int tier, double textFrom, double lineFrom, double lineTo) {
        private double least() {
            return Math.min(textFrom, lineFrom);
        }

        private double most() {
            return Math.max(textFrom + wanted.textMm(), lineTo);
        }

        private boolean outside() {
            return textFrom >= wanted.to() || textFrom + wanted.textMm() <= wanted.from();
        }
    }

    private SpanTiers(List<Wanted> wanted, double least, double most) {
        this.least = least;
        this.most = most;
        waiting = new ArrayList<>(wanted.stream().sorted(Comparator.comparingDouble(Wanted::length)).toList());
    }

    /** Places all, their values between two ends. */
    static List<Placed> place(List<Wanted> wanted, double least, double most) {
        SpanTiers tiers = new SpanTiers(wanted, least, most);
        while (!tiers.waiting.isEmpty()) {
            Wanted next = tiers.waiting.remove(0);
            tiers.placed.add(tiers.place(next));
        }
        return tiers.placed;
    }

    private Placed place(Wanted wanted) {
        for (int tier = lowest(wanted); tier < MOST_TIERS; tier++) {
            for (double from : candidates(wanted, tier)) {
                Placed here = at(wanted, tier, from);
                if (free(here)) {
                    return here;
                }
            }
        }
        throw new IllegalStateException("no room for a dimension among " + placed.size());
    }

    /** Over every nearer dimension whose room its own extension lines would cross. */
    private int lowest(Wanted wanted) {
        return placed.stream().filter(other -> wanted.length() >= other.wanted.length() && other.textFrom < wanted.to
                && other.textFrom + other.wanted.textMm > wanted.from).mapToInt(other -> other.tier + 1).max().orElse(0);
    }

    /** Over its own line first, then beside it, then beyond the extension lines of those that come after; on the paper. */
    private List<Double> candidates(Wanted wanted, int tier) {
        List<Double> all = new ArrayList<>();
        double spare = (wanted.length() - wanted.textMm) / 2 - CLEAR_MM;
        if (spare >= 0) {
            double middle = (wanted.from + wanted.to - wanted.textMm) / 2;
            all.addAll(List.of(middle, middle - spare / 2, middle + spare / 2, middle - spare, middle + spare));
        }
        double beside = wanted.tight() ? TAIL_MM : CLEAR_MM;
        List<Double> outside = new ArrayList<>(List.of(wanted.to + beside, wanted.from - beside - wanted.textMm));
        for (Wanted later : waiting) {
            for (double line : new double[] {later.from, later.to}) {
                outside.add(Math.max(line + CLEAR_MM, wanted.to + beside));
                outside.add(Math.min(line - CLEAR_MM, wanted.from - beside) - wanted.textMm);
            }
        }
        outside.sort(Comparator.comparingDouble(from -> Math.abs(from + wanted.textMm / 2 - (wanted.from + wanted.to) / 2)));
        all.addAll(outside);
        // far out, rather a value off the paper's area than none
        return tier < MOST_TIERS / 2 ? all.stream().filter(from -> from >= least && from + wanted.textMm <= most).toList() : all;
    }

    private static Placed at(Wanted wanted, int tier, double textFrom) {
        double tail = wanted.tight() ? TAIL_MM : 0;
        boolean right = textFrom >= wanted.to;
        boolean left = textFrom + wanted.textMm <= wanted.from;
        return new Placed(wanted, tier, textFrom, left ? textFrom : wanted.from - tail, right ? textFrom + wanted.textMm
                : wanted.to + tail);
    }

    private boolean free(Placed here) {
        double from = here.textFrom - CLEAR_MM;
        double to = here.textFrom + here.wanted.textMm + CLEAR_MM;
        boolean crossed = waiting.stream().anyMatch(later -> within(later.from, from, to) || within(later.to, from, to));
        return !crossed && placed.stream().noneMatch(other -> touches(here, other));
    }

    /** Shares room on the same tier, or has an extension line through the other's value. */
    private static boolean touches(Placed here, Placed other) {
        double apart = here.outside() || other.outside() ? APART_MM : CLEAR_MM;
        if (here.tier == other.tier && here.least() < other.most() + apart && other.least() < here.most() + apart) {
            return true;
        }
        Placed nearer = here.tier < other.tier ? here : other;
        Placed farther = nearer == here ? other : here;
        double from = nearer.textFrom - CLEAR_MM / 2;
        double to = nearer.textFrom + nearer.wanted.textMm + CLEAR_MM / 2;
        return here.tier != other.tier && (within(farther.wanted.from, from, to) || within(farther.wanted.to, from, to));
    }

    private static boolean within(double value, double from, double to) {
        return value > from && value < to;
    }
}
