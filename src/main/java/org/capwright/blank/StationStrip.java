package org.capwright.blank;

import java.util.List;

/**
 * What lies where along a cylinder's girth, to be printed at true size and laid along the work.
 *
 * @param name which piece of which cylinder
 * @param face what the strip is laid on
 * @param lengthMm its length
 * @param marks what lies where, from the left
 */
public record StationStrip(String name, Face face, double lengthMm, List<Mark> marks) {
    /** Keeps its own copy. */
    public StationStrip {
        marks = List.copyOf(marks);
    }

    /** What a strip is laid on. */
    public enum Face {
        /** The flat sheet, outside face up, along its lower edge. */
        FLAT("flat sheet, outside face up"),
        /** Round the outside of the rolled part, foot down. */
        OUTSIDE("round the outside of the rolled part"),
        /** Round the inside of the rolled part, foot down: seen from there stations run the other way. */
        INSIDE("round the inside of the rolled part");

        private final String words;

        Face(String words) {
            this.words = words;
        }

        /**
         * What to write on the strip.
         *
         * @return such as {@code round the outside of the rolled part}
         */
        public String words() {
            return words;
        }
    }

    /**
     * Something at a station.
     *
     * @param atMm distance from the strip's left end
     * @param what what is there
     */
    public record Mark(double atMm, String what) {
    }
}
