package org.capwright.job;

/**
 * Why an input is refused. Shown to the person as it is.
 *
 * @param path the field, such as {@code leaves.cover}
 * @param value what was typed there; empty where nothing was
 * @param reason what is wrong, with the allowed range
 * @param remedy what to do about it
 */
public record Problem(String path, String value, String reason, String remedy) {
    /**
     * The whole message on one line.
     *
     * @return {@code path: value: reason. Remedy.}
     */
    public String message() {
        String quoted = value.isEmpty() ? "" : " \"" + value + "\":";
        return path + ":" + quoted + " " + reason + ". " + remedy + ".";
    }
}
