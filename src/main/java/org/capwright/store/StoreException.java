package org.capwright.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file or folder could not be read or written. The message is for the person, the cause for whoever looks into it. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Refuses without a technical cause.
     *
     * @param message what could not be done, why, and what to do about it
     */
    public StoreException(String message) {
        super(message);
    }

    private StoreException(String message, IOException cause) {
        super(message, cause);
    }

    /**
     * A file that could not be read.
     *
     * @param file the file
     * @param cause why
     * @return the exception to throw
     */
    public static StoreException reading(Path file, IOException cause) {
        return new StoreException(file + " could not be read: " + reason(cause) + ".", cause);
    }

    /**
     * A file or folder that could not be written.
     *
     * @param target the file or folder
     * @param cause why
     * @return the exception to throw
     */
    public static StoreException writing(Path target, IOException cause) {
        return new StoreException(target + " could not be written: " + reason(cause) + ".", cause);
    }

    private static String reason(IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (cause instanceof AccessDeniedException) {
            return "access was denied";
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
