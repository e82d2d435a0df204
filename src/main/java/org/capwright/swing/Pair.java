package org.capwright.swing;

/** What comes near what. */
public enum Pair {
    /** A leaf and the hood's inside, beads included. */
    LEAF_HOOD("leaf.hood", "leaf to hood"),
    /** A leaf's heel and the outboard wall of its gutter. */
    HEEL_WALL("heel.wall", "heel to gutter wall"),
    /** A leaf's heel, or the flange of the free edge next to it, and the floor of the gutter. */
    HEEL_FLOOR("heel.floor", "heel to gutter floor"),
    /** The curved drip flange and the sleeve. */
    LEAF_SLEEVE("leaf.sleeve", "leaf to sleeve"),
    /** The curved lip and the tops of the standoffs. */
    LIP_STANDOFF("lip.standoff", "lip to standoffs"),
    /** The curved drip flange and the spouts. */
    FLANGE_SPOUT("flange.spout", "curved flange to spout"),
    /** A leaf of the middle pair and the other one. */
    LEAF_LEAF("leaf.leaf", "leaf to opposite leaf"),
    /** A leaf's free edge and the next leaf's hinge edge or rod. */
    LEAF_NEXT("leaf.next", "leaf to next leaf and its rod"),
    /** A leaf and the stop bar of the next joint. */
    LEAF_BAR("leaf.bar", "leaf to the next stop bar"),
    /** A leaf and the ends of its bushings. */
    LEAF_BUSHING("leaf.bushing", "leaf to bushing ends");

    private final String word;
    private final String words;

    Pair(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /**
     * Its name in figures.
     *
     * @return such as {@code leaf.hood}
     */
    public String word() {
        return word;
    }

    /**
     * Its name for people.
     *
     * @return such as {@code leaf to hood}
     */
    public String words() {
        return words;
    }
}
