package org.capwright.export;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.capwright.blank.Blank;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.drawing.Layer;
import org.capwright.geom.Bounds;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.units.ShopFormat;

/**
 * Writes a blank as SVG 1.1 (W3C recommendation), true size: one user unit is one millimetre, arcs stay arcs, one group a
 * layer.
 */
public final class SvgFile {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final double MARGIN_MM = 5;
    /** Height of capitals as a share of the size of type, about, in sans-serif faces. */
    private static final double CAPITAL_SHARE = 0.72;

    private final XMLStreamWriter xml;
    private final Bounds page;

    private SvgFile(XMLStreamWriter xml, Bounds page) {
        this.xml = xml;
        this.page = page;
    }

    /**
     * Writes a blank.
     *
     * @param file where to
     * @param blank the blank
     * @param tag its job
     * @param format how numbers are printed
     * @throws IOException if the file can't be written
     */
    public static void write(Path file, Blank blank, JobTag tag, ShopFormat format) throws IOException {
        String said = String.format(Locale.ROOT, "%s, cut %d from %s, %s, %s. %s.", blank.name(), blank.quantity(),
                Sheets.name(blank.sheet(), format), blank.faceUp(), blank.grain().words(), String.join("; ", blank.notes()));
        write(file, blank.drawing(), blank.name(), said, tag);
    }

    /**
     * Writes a drawing.
     *
     * @param file where to
     * @param drawing the drawing
     * @param name its name, for the title
     * @param said what to say of it, whole sentences
     * @param tag its job
     * @throws IOException if the file can't be written
     */
    public static void write(Path file, Drawing drawing, String name, String said, JobTag tag) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            String fouls = tag.fouls().isEmpty() ? "" : "FOUL: " + String.join("; ", tag.fouls()) + ". ";
            new SvgFile(xml, drawing.bounds().grown(MARGIN_MM)).write(drawing, tag.name() + ": " + name, fouls + tag.line() + ". "
                    + said);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }

    private void write(Drawing drawing, String title, String said) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        line();
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("version", "1.1");
        xml.writeAttribute("width", number(page.width()) + "mm");
        xml.writeAttribute("height", number(page.height()) + "mm");
        xml.writeAttribute("viewBox", "0 0 " + number(page.width()) + " " + number(page.height()));
        text("title", title);
        text("desc", said);
        for (Layer layer : Layer.values()) {
            layer(drawing, layer);
        }
        line();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void layer(Drawing drawing, Layer layer) throws XMLStreamException {
        line();
        xml.writeStartElement("g");
        xml.writeAttribute("id", layer.word());
        if (layer == Layer.TEXT) {
            xml.writeAttribute("font-family", "sans-serif");
            xml.writeAttribute("fill", "#000000");
            for (Label label : drawing.labels()) {
                label(label);
            }
        } else {
            stroke(layer);
            for (org.capwright.geom.Path path : drawing.paths(layer)) {
                line();
                xml.writeEmptyElement("path");
                xml.writeAttribute("d", data(path));
            }
        }
        line();
        xml.writeEndElement();
    }

    private void stroke(Layer layer) throws XMLStreamException {
        xml.writeAttribute("fill", "none");
        xml.writeAttribute("stroke", "#000000");
        xml.writeAttribute("stroke-width", layer == Layer.CUT ? "0.25" : "0.15");
        if (layer == Layer.BEND) {
            xml.writeAttribute("stroke-dasharray", "6 2 1 2");
        }
    }

    private void label(Label label) throws XMLStreamException {
        line();
        xml.writeStartElement("text");
        String at = number(x(label.at())) + " " + number(y(label.at()));
        xml.writeAttribute("transform", "translate(" + at + ") rotate(" + number(-Math.toDegrees(label.turnRad())) + ")");
        xml.writeAttribute("font-size", number(label.heightMm() / CAPITAL_SHARE));
        xml.writeAttribute("text-anchor", label.anchor().name().toLowerCase(Locale.ROOT));
        xml.writeCharacters(label.text());
        xml.writeEndElement();
    }

    private String data(org.capwright.geom.Path path) {
        StringBuilder data = new StringBuilder("M ").append(point(path.segments().get(0).from()));
        for (Segment segment : path.segments()) {
            if (segment instanceof Segment.Arc arc) {
                arc(data, arc);
            } else {
                data.append(" L ").append(point(segment.to()));
            }
        }
        return path.closed() ? data + " Z" : data.toString();
    }

    /** An arc over a half turn is written as two, so that its ends never fall together. */
    private void arc(StringBuilder data, Segment.Arc arc) {
        int parts = Math.abs(arc.sweepRad()) > Math.PI ? 2 : 1;
        for (int i = 1; i <= parts; i++) {
            String radius = number(arc.radius());
            // y is turned over, so what runs counterclockwise runs the other way on the page
            data.append(" A ").append(radius).append(' ').append(radius).append(" 0 0 ")
                    .append(arc.sweepRad() > 0 ? '0' : '1').append(' ').append(point(arc.pointAt((double) i / parts)));
        }
    }

    private String point(Vec2 p) {
        return number(x(p)) + " " + number(y(p));
    }

    private double x(Vec2 p) {
        return p.x() - page.minX();
    }

    private double y(Vec2 p) {
        return page.maxY() - p.y();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value == 0 ? 0.0 : value);
    }

    private void text(String element, String text) throws XMLStreamException {
        line();
        xml.writeStartElement(element);
        xml.writeCharacters(allowed(text));
        xml.writeEndElement();
    }

    /** The text with the replacement character for what XML 1.0 (section 2.2) does not allow: control characters, half pairs. */
    private static String allowed(String text) {
        int[] points = text.codePoints().map(point -> point == '\t' || point == '\n' || point == '\r' || point >= 0x20
                && point < 0xD800
                || point >= 0xE000 && point < 0xFFFE || point >= 0x10000 ? point : 0xFFFD).toArray();
        return new String(points, 0, points.length);
    }

    private void line() throws XMLStreamException {
        xml.writeCharacters("\n");
    }
}
