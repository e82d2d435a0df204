package org.capwright.units;

/** Thrown where a text can't be read as the quantity asked for; the message quotes it and shows what could be read. */
public final class UnreadableQuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /**
     * With a message for the person who typed the text.
     *
     * @param message what was typed and what would be read
     */
    public UnreadableQuantityException(String message) {
        super(message);
    }
}
