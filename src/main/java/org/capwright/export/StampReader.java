package org.capwright.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Finds out which job a file came from: PDF by its description, SVG by its {@code desc}, DXF by its comments or writing. */
public final class StampReader {
    private static final Pattern LINE = Pattern.compile("(?m)^(.*?), stamp ([0-9a-f]{8})\\b");
    private static final Pattern BARE = Pattern.compile("stamp ([0-9a-f]{8})\\b");

    private StampReader() {
    }

    /**
     * What a file says about its job.
     *
     * @param job the job's name, with its revision where it has one
     * @param stamp the job's stamp
     */
    public record Found(String job, String stamp) {
    }

    /**
     * Reads a file's stamp. Which kind of file it is follows from its name.
     *
     * @param file a PDF, SVG or DXF file
     * @return the stamp; empty where the file has none
     * @throws IOException if it can't be read or is not what its name says
     */
    public static Optional<Found> read(Path file) throws IOException {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".pdf")) {
            return pdf(file);
        }
        return name.endsWith(".svg") ? svg(file) : name.endsWith(".dxf") ? dxf(file) : Optional.empty();
    }

    private static Optional<Found> pdf(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            String subject = Optional.ofNullable(document.getDocumentInformation().getSubject()).orElse("");
            Matcher stamp = BARE.matcher(subject);
            String title = Optional.ofNullable(document.getDocumentInformation().getTitle()).orElse("");
            return stamp.find() ? Optional.of(new Found(title.replaceFirst("^[^,]*, ", ""), stamp.group(1))) : Optional.empty();
        }
    }

    /** The description holds the tag after what is foul, if anything is. */
    private static Optional<Found> svg(Path file) throws IOException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        String title = "";
        try (var stream = Files.newInputStream(file)) {
            XMLStreamReader xml = factory.createXMLStreamReader(stream);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamReader.START_ELEMENT && xml.getLocalName().equals("title")) {
                    title = xml.getElementText();
                } else if (xml.isStartElement() && xml.getLocalName().equals("desc")) {
                    Matcher stamp = BARE.matcher(xml.getElementText());
                    return stamp.find() ? Optional.of(new Found(title.replaceFirst(": [^:]*$", ""), stamp.group(1)))
                            : Optional.empty();
                }
            }
            return Optional.empty();
        } catch (XMLStreamException e) {
            throw new IOException("it is not well-formed SVG", e);
        }
    }

    private static Optional<Found> dxf(Path file) throws IOException {
        Matcher line = LINE.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
        return line.find() ? Optional.of(new Found(letters(line.group(1)), line.group(2))) : Optional.empty();
    }

    /** Turns the codes of letters beyond ASCII back. */
    private static String letters(String text) {
        return Pattern.compile("\\\\U\\+([0-9A-F]{4})").matcher(text)
                .replaceAll(code -> Matcher.quoteReplacement(Character.toString((char) Integer.parseInt(code.group(1), 16))));
    }
}
