package org.capwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.capwright.job.JobText;

/**
 * What the window keeps between its runs, in a folder of the user's: settings (plain properties, UTF-8) and a draft of what is
 * typed, which is there only after a crash. Losing it loses nothing but comfort, so a folder that can't be used is left alone.
 */
public final class DeskFolder {
    private static final String DRAFT_FILE = "draft.json";
    private static final String SETTINGS_FILE = "settings.properties";
    private static final String DRAFT_OF = "draft.of";

    private final Path folder;

    /**
     * The folder.
     *
     * @param folder made when it is first needed
     */
    public DeskFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * The usual folder: {@code .capwright} in the user's home.
     *
     * @return the folder
     */
    public static DeskFolder ofUser() {
        return new DeskFolder(Path.of(System.getProperty("capwright.home",
                Path.of(System.getProperty("user.home"), ".capwright").toString())));
    }

    /**
     * The settings.
     *
     * @return by name; empty where there are none
     */
    public Map<String, String> settings() {
        Properties properties = new Properties();
        Path file = folder.resolve(SETTINGS_FILE);
        if (Files.exists(file)) {
            try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                properties.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                return Map.of();
            }
        }
        Map<String, String> settings = new LinkedHashMap<>();
        properties.stringPropertyNames().forEach(name -> settings.put(name, properties.getProperty(name)));
        return settings;
    }

    /**
     * Keeps one setting.
     *
     * @param name its name
     * @param value its value
     * @return whether it could be kept
     */
    public boolean keep(String name, String value) {
        Properties properties = new Properties();
        properties.putAll(settings());
        properties.setProperty(name, value);
        try {
            Files.createDirectories(folder);
            try (var writer = Files.newBufferedWriter(folder.resolve(SETTINGS_FILE), StandardCharsets.UTF_8)) {
                properties.store(writer, null);
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Keeps what is typed, against a crash.
     *
     * @param text what is typed
     * @param file the file it belongs to, if any
     * @return whether it could be kept
     */
    public boolean keepDraft(JobText text, Optional<Path> file) {
        try {
            Files.createDirectories(folder);
            JobFiles.write(folder.resolve(DRAFT_FILE), text);
            return keep(DRAFT_OF, file.map(path -> path.toAbsolutePath().toString()).orElse(""));
        } catch (IOException | StoreException e) {
            return false;
        }
    }

    /**
     * What a crash left behind.
     *
     * @return the draft; empty where there is none
     */
    public Optional<JobText> draft() {
        Path file = folder.resolve(DRAFT_FILE);
        try {
            return Files.exists(file) ? Optional.of(JobFiles.read(file)) : Optional.empty();
        } catch (StoreException | UnreadableJobException e) {
            return Optional.empty();
        }
    }

    /**
     * The file that the draft belongs to.
     *
     * @return the file; empty where it has none
     */
    public Optional<Path> draftOf() {
        return Optional.ofNullable(settings().get(DRAFT_OF)).filter(text -> !text.isEmpty()).map(Path::of);
    }

    /** Forgets the draft: nothing is unsaved any more. */
    public void dropDraft() {
        try {
            Files.deleteIfExists(folder.resolve(DRAFT_FILE));
        } catch (IOException e) {
            // a draft that can't be deleted is offered once more: no harm
            return;
        }
    }

    /**
     * The shop's own stock file.
     *
     * @return where it is kept; may not be there yet
     */
    public Path stockFile() {
        return folder.resolve("stock.json");
    }

    /**
     * The shop's own rate card.
     *
     * @return where it is kept; may not be there yet
     */
    public Path ratesFile() {
        return folder.resolve("rates.json");
    }

    /**
     * What the user's printers get wrong.
     *
     * @return the printers kept here
     */
    public PrinterFile printers() {
        return new PrinterFile(folder.resolve("printers.json"));
    }

    /**
     * Job files opened lately, the last first.
     *
     * @return those that are still there
     */
    public List<Path> recent() {
        Map<String, String> settings = settings();
        List<Path> recent = new ArrayList<>();
        for (int i = 0; settings.containsKey("recent." + i); i++) {
            Path path = Path.of(settings.get("recent." + i));
            if (Files.exists(path)) {
                recent.add(path);
            }
        }
        return recent;
    }

    /**
     * Puts a job file first among the recent ones.
     *
     * @param file the file
     */
    public void opened(Path file) {
        List<Path> recent = new ArrayList<>(List.of(file.toAbsolutePath().normalize()));
        recent().stream().filter(path -> !path.equals(recent.get(0))).limit(7).forEach(recent::add);
        for (int i = 0; i < recent.size(); i++) {
            keep("recent." + i, recent.get(i).toString());
        }
    }
}
