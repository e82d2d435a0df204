package org.capwright.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Shop;
import org.capwright.job.JobText;
import org.capwright.store.DeskFolder;
import org.capwright.store.JobFiles;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;

/**
 * What the window opens with: the given job, else the last one, the first time a demo.
 *
 * @param folder where settings and drafts are kept
 * @param session the job, solved
 * @param problem why the job that was asked for could not be opened
 */
record Opening(DeskFolder folder, Session session, Optional<String> problem) {
    private static final String DEMO = "/org/capwright/desk/kiln-room.json";

    /** Opens; needs no screen, so that it can be done while the screen is made ready. */
    static Opening of(List<String> words) {
        DeskFolder folder = DeskFolder.ofUser();
        Session session = new Session(demo(), Shop.of(folder));
        Optional<Path> last = Optional.ofNullable(folder.settings().get("last")).map(Path::of).filter(Files::exists);
        Optional<Path> wanted = words.isEmpty() ? last : Optional.of(Path.of(words.get(0)));
        return new Opening(folder, session, wanted.flatMap(path -> open(session, folder, path)));
    }

    private static Optional<String> open(Session session, DeskFolder folder, Path path) {
        try {
            session.open(path);
            folder.opened(path);
            return Optional.empty();
        } catch (StoreException | UnreadableJobException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** The demo lies inside the program, so that the window always has something to show. */
    private static JobText demo() {
        try {
            Path file = Files.createTempFile("capwright-demo", ".json");
            try (InputStream stream = Opening.class.getResourceAsStream(DEMO)) {
                Files.write(file, stream.readAllBytes());
                return JobFiles.read(file);
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
