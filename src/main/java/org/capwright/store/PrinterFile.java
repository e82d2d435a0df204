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
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrinterScale;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The user's measured printers, each with a kind of paper, in a JSON file in the user's own folder. */
public final class PrinterFile {
    private static final String LIST = "printers";

    private final Path file;

    /**
     * The printers in a file.
     *
     * @param file the file; it need not be there yet
     */
    public PrinterFile(Path file) {
        this.file = file;
    }

    /**
     * Where a user's printers are kept unless told otherwise.
     *
     * @return {@code .capwright/printers.json} in the user's home
     */
    public static Path usual() {
        return Path.of(System.getProperty("user.home"), ".capwright", "printers.json");
    }

    /**
     * A printer with a paper.
     *
     * @param paper the paper
     * @param scale the printer's name and what it gets wrong
     */
    public record Entry(Paper paper, PrinterScale scale) {
        boolean same(Entry other) {
            return paper == other.paper && scale.printer().equals(other.scale.printer());
        }
    }

    /**
     * All printers.
     *
     * @return in the order in which they were first added
     * @throws StoreException if the file can't be read or understood
     */
    public List<Entry> all() {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            List<Entry> entries = new ArrayList<>();
            for (JsonNode node : JsonMapper.builder().build().readTree(Files.readAllBytes(file)).path(LIST)) {
                entries.add(entry(node));
            }
            return List.copyOf(entries);
        } catch (IOException e) {
            throw StoreException.reading(file, e);
        } catch (JacksonException | IllegalArgumentException e) {
            throw new StoreException(file
                    + " can't be understood as a list of printers. Mend it, or delete it and measure the printers anew.");
        }
    }

    private static Entry entry(JsonNode node) {
        PrinterScale scale = new PrinterScale(node.path("printer").stringValue(), node.path("across").doubleValue(),
                node.path("along").doubleValue());
        for (double factor : new double[] {scale.across(), scale.along()}) {
            // what set() lets through: 1 / (1 + error), the error at most 1 %
            if (!(Math.abs(1 / factor - 1) <= PrinterScale.MOST + 1e-9)) {
                throw new IllegalArgumentException("factor " + factor);
            }
        }
        return new Entry(Paper.valueOf(node.path("paper").stringValue()), scale);
    }

    /**
     * One printer with one paper.
     *
     * @param printer its name
     * @param paper the paper
     * @return its scale, if it was measured
     * @throws StoreException if the file can't be read or understood
     */
    public Optional<PrinterScale> find(String printer, Paper paper) {
        return all().stream().filter(entry -> entry.paper() == paper && entry.scale().printer().equals(printer))
                .map(Entry::scale).findFirst();
    }

    /**
     * Keeps a printer with a paper, in place of what was known of it.
     *
     * @param entry the printer
     * @throws StoreException if the file can't be read, understood or written
     */
    public void put(Entry entry) {
        List<Entry> entries = new ArrayList<>(all());
        Optional<Entry> old = entries.stream().filter(entry::same).findFirst();
        old.ifPresentOrElse(known -> entries.set(entries.indexOf(known), entry), () -> entries.add(entry));
        List<Map<String, Object>> nodes = entries.stream().map(PrinterFile::node).toList();
        byte[] bytes = PrettyJson.print(Map.of(LIST, nodes)).getBytes(StandardCharsets.UTF_8);
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Path staged = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
            Files.write(staged, bytes);
            AtomicMove.replace(staged, file);
        } catch (IOException e) {
            throw StoreException.writing(file, e);
        }
    }

    private static Map<String, Object> node(Entry entry) {
        Map<String, Object> node = new LinkedHashMap<>();
        node.put("printer", entry.scale().printer());
        node.put("paper", entry.paper().name());
        node.put("across", entry.scale().across());
        node.put("along", entry.scale().along());
        return node;
    }
}
