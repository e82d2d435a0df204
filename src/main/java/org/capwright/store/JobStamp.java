package org.capwright.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.capwright.job.Inputs;
import org.capwright.job.JobText;

/**
 * Names what was typed for a job by a short fingerprint, so that a page can be matched with the job it was printed from.
 * Every text of the design counts, name and notes too, since every text is printed somewhere; readings, held parts and
 * tolerances don't, so that a page printed before measuring still matches. Neither do the order of the fields and the white
 * space of the file. It goes by what was typed: {@code 1/2 in} and {@code 0.5 in} have different stamps, and so
 * have a default left out and the same value typed.
 */
public final class JobStamp {
    private static final int SHOWN_DIGITS = 8;

    private JobStamp() {
    }

    /**
     * The stamp of a job.
     *
     * @param text what was typed
     * @return the first 8 hexadecimal digits of SHA-256 (FIPS 180-4) over paths and texts in the declared order
     */
    public static String of(JobText text) {
        StringBuilder all = new StringBuilder();
        // the length keeps one text that looks like two lines apart from two texts
        JobOrder.ordered(text).forEach((path, typed) -> {
            if (Inputs.ofDesign(path)) {
                all.append(path).append(' ').append(typed.length()).append(' ').append(typed).append('\n');
            }
        });
        byte[] digest = sha256().digest(all.toString().getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest).substring(0, SHOWN_DIGITS);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
