package org.capwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Fills a folder wholly or not at all. Everything is written into a temporary folder beside it first; only when that has
 * worked are the files moved to their places, one by one and each in one step. If anything fails, what was there before is
 * there again and nothing else is left behind. Other files in the folder are left alone.
 */
public final class StagedFolder {
    private StagedFolder() {
    }

    /** Writes the files. */
    @FunctionalInterface
    public interface Writing {
        /**
         * Writes all files.
         *
         * @param folder where to write them
         * @throws IOException if a file can't be written
         */
        void into(Path folder) throws IOException;
    }

    /**
     * Fills a folder.
     *
     * @param folder the folder, made if it isn't there
     * @param writing writes the files into the folder it is given; what it throws is passed on once all is cleared away
     * @return the files written, in their places, by name
     * @throws StoreException if the folder or a file can't be written
     */
    public static List<Path> fill(Path folder, Writing writing) {
        Path target = folder.toAbsolutePath().normalize();
        if (Files.exists(target) && !Files.isDirectory(target)) {
            throw new StoreException(folder + " is a file. Name a folder to write into.");
        }
        try {
            // beside the folder: on the same disk, so that moving a file is one step
            Path staging = Files.createTempDirectory(existing(target), ".capwright-");
            try {
                return staged(staging, target, writing);
            } finally {
                deleteAll(staging);
            }
        } catch (IOException e) {
            throw StoreException.writing(folder, e);
        }
    }

    private static List<Path> staged(Path staging, Path target, Writing writing) throws IOException {
        Path fresh = Files.createDirectory(staging.resolve("fresh"));
        writing.into(fresh);
        Replacement replacement = new Replacement(Files.createDirectory(staging.resolve("replaced")));
        try {
            for (Path file : files(fresh)) {
                replacement.put(file, target.resolve(fresh.relativize(file)));
            }
            return replacement.placed();
        } catch (IOException e) {
            replacement.undo();
            throw e;
        }
    }

    /** The nearest folder above that exists. */
    private static Path existing(Path target) {
        Path above = target.getParent() == null ? target : target.getParent();
        while (!Files.isDirectory(above) && above.getParent() != null) {
            above = above.getParent();
        }
        return above;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void deleteAll(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(path);
            }
        }
    }
}
