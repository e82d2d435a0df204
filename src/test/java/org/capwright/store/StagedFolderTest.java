package org.capwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StagedFolderTest {
    @TempDir
    private Path parent;

    @Test
    void fillsAFolderThatIsNotThereYet() throws IOException {
        Path folder = parent.resolve("a/b");

        List<Path> written = StagedFolder.fill(folder, staging -> {
            Files.writeString(staging.resolve("two.txt"), "2");
            Files.writeString(Files.createDirectory(staging.resolve("in")).resolve("one.txt"), "1");
        });

        assertThat(written).containsExactly(folder.resolve("in/one.txt"), folder.resolve("two.txt"));
        assertThat(tree()).isEqualTo(Map.of("a", "", "a/b", "", "a/b/in", "", "a/b/in/one.txt", "1", "a/b/two.txt", "2"));
    }

    @Test
    void replacesItsOwnFilesAndLeavesOthers() throws IOException {
        Files.writeString(parent.resolve("mine.txt"), "keep");
        Path folder = Files.createDirectory(parent.resolve("f"));
        Files.writeString(folder.resolve("other.txt"), "other");
        Files.writeString(folder.resolve("one.txt"), "old");

        StagedFolder.fill(folder, staging -> Files.writeString(staging.resolve("one.txt"), "new"));

        assertThat(tree()).isEqualTo(Map.of("mine.txt", "keep", "f", "", "f/other.txt", "other", "f/one.txt", "new"));
    }

    @Test
    void anExceptionMidwayLeavesNothingBehind() throws IOException {
        assertThatThrownBy(() -> StagedFolder.fill(parent.resolve("a/b"), staging -> {
            Files.writeString(staging.resolve("one.txt"), "1");
            throw new IllegalStateException("midway");
        })).isInstanceOf(IllegalStateException.class).hasMessage("midway");

        assertThat(tree()).isEmpty();
    }

    @Test
    void anUnwritableFileLeavesNothingBehind() throws IOException {
        Path folder = parent.resolve("f");

        assertThatThrownBy(() -> StagedFolder.fill(folder, staging -> {
            Files.writeString(staging.resolve("one.txt"), "1");
            Files.writeString(staging.resolve("missing/two.txt"), "2");
        })).isInstanceOf(StoreException.class).hasMessage(folder + " could not be written: there is no such file or folder.");

        assertThat(tree()).isEmpty();
    }

    @Test
    void aPlaceThatIsTakenPutsEverythingBack() throws IOException {
        Path folder = Files.createDirectory(parent.resolve("f"));
        Files.writeString(folder.resolve("b.txt"), "old");
        Files.writeString(folder.resolve("c"), "a file where a folder should be");
        Map<String, String> before = tree();

        assertThatThrownBy(() -> StagedFolder.fill(folder, staging -> {
            Files.writeString(staging.resolve("a.txt"), "new");
            Files.writeString(staging.resolve("b.txt"), "new");
            Files.writeString(Files.createDirectory(staging.resolve("c")).resolve("d.txt"), "new");
        })).isInstanceOf(StoreException.class);

        assertThat(tree()).isEqualTo(before);
    }

    @Test
    void aFileIsNoFolder() throws IOException {
        Path file = Files.writeString(parent.resolve("f"), "text");

        assertThatThrownBy(() -> StagedFolder.fill(file, staging -> Files.writeString(staging.resolve("a"), "1")))
                .isInstanceOf(StoreException.class).hasMessage(file + " is a file. Name a folder to write into.");
        assertThat(tree()).isEqualTo(Map.of("f", "text"));
    }

    private Map<String, String> tree() throws IOException {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(parent)) {
            for (Path path : paths.filter(path -> !path.equals(parent)).toList()) {
                String name = parent.relativize(path).toString().replace('\\', '/');
                tree.put(name, Files.isDirectory(path) ? "" : Files.readString(path));
            }
        }
        return tree;
    }
}
