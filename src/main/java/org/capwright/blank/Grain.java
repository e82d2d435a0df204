package org.capwright.blank;

/** How a blank lies to the rolling direction of the sheet. */
public enum Grain {
    /** Grain along the blank's x. */
    ALONG_X("grain left to right"),
    /** Grain along the blank's y. */
    ALONG_Y("grain up and down"),
    /** Any way that nests well. */
    FREE("grain free");

    private final String words;

    Grain(String words) {
        this.words = words;
    }

    /**
     * What to write on the blank.
     *
     * @return such as {@code grain left to right}
     */
    public String words() {
        return words;
    }
}
