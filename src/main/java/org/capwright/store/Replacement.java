package org.capwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;

/** Moves files to their places, keeping what they replace until all are there. */
final class Replacement {
    private final Path keep;
    private final List<Path> placed = new ArrayList<>();
    private final Deque<Step> steps = new ArrayDeque<>();

    /** Keeps replaced files in a folder on the same disk. */
    Replacement(Path keep) {
        this.keep = keep;
    }

    /** Moves one file to its place. */
    void put(Path from, Path to) throws IOException {
        makeFolders(to.getParent());
        if (Files.exists(to)) {
            Path kept = keep.resolve(Integer.toString(steps.size()));
            AtomicMove.replace(to, kept);
            steps.push(() -> AtomicMove.replace(kept, to));
        }
        AtomicMove.replace(from, to);
        steps.push(() -> Files.delete(to));
        placed.add(to);
    }

    /** The files in their places. */
    List<Path> placed() {
        return Collections.unmodifiableList(placed);
    }

    /** Takes everything back, last first. */
    void undo() throws IOException {
        while (!steps.isEmpty()) {
            steps.pop().undo();
        }
    }

    private void makeFolders(Path folder) throws IOException {
        if (folder != null && !Files.isDirectory(folder)) {
            makeFolders(folder.getParent());
            Files.createDirectory(folder);
            steps.push(() -> Files.delete(folder));
        }
    }

    @FunctionalInterface
    private interface Step {
        void undo() throws IOException;
    }
}
