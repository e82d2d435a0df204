package org.capwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.RandomCaps;
import org.capwright.blank.Writing;
import org.capwright.drawing.Layer;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** SVG files read back as XML and measured. */
class SvgFileTest {
    private static final double ROUNDED_MM = 1e-3;

    @TempDir
    private Path folder;

    @Test
    void kiln() throws Exception {
        checkAll(Cap.solve(Jobs.kilnWith(Map.of())), "kiln");
    }

    @Test
    void randomCaps() throws Exception {
        for (RandomCaps.Drawn drawn : RandomCaps.of(70, 15)) {
            checkAll(drawn.cap(), drawn.toString());
        }
    }

    private void checkAll(Cap cap, String which) throws Exception {
        for (Blank blank : Blanks.of(cap)) {
            Document document = written(cap, blank);
            head(document, blank, which);
            for (Layer layer : List.of(Layer.CUT, Layer.BEND, Layer.MARK)) {
                paths(group(document, layer), blank.drawing().paths(layer), blank.id() + ", " + layer + ", " + which);
            }
            assertThat(group(document, Layer.TEXT).getElementsByTagName("text").getLength()).isEqualTo(blank.drawing().labels().size());
        }
    }

    private Document written(Cap cap, Blank blank) throws IOException, SAXException, ParserConfigurationException {
        Path file = folder.resolve(blank.id() + ".svg");
        SvgFile.write(file, blank, JobTag.of(cap.job(), "0123abcd", List.of()), Writing.of(cap).format());
        assertThat(Files.readString(file)).doesNotContain("NaN").doesNotContain("Infinity").contains("stamp 0123abcd");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }

    private static void head(Document document, Blank blank, String which) {
        Element svg = document.getDocumentElement();
        assertThat(svg.getTagName()).isEqualTo("svg");
        assertThat(svg.getAttribute("version")).isEqualTo("1.1");
        assertThat(svg.getAttribute("xmlns")).isEqualTo("http://www.w3.org/2000/svg");
        assertThat("0 0 " + svg.getAttribute("width") + " " + svg.getAttribute("height")).as(which)
                .isEqualTo(svg.getAttribute("viewBox").replaceFirst("(\\S+) (\\S+) (\\S+) (\\S+)", "$1 $2 $3mm $4mm"));
        double width = Double.parseDouble(svg.getAttribute("width").replace("mm", ""));
        assertThat(width).as(which).isGreaterThanOrEqualTo(blank.lengthMm());
    }

    private static Element group(Document document, Layer layer) {
        NodeList groups = document.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            if (((Element) groups.item(i)).getAttribute("id").equals(layer.word())) {
                return (Element) groups.item(i);
            }
        }
        throw new AssertionError("no group " + layer.word());
    }

    private static void paths(Element group, List<org.capwright.geom.Path> expected, String which) {
        NodeList paths = group.getElementsByTagName("path");
        assertThat(paths.getLength()).as(which).isEqualTo(expected.size());
        for (int i = 0; i < paths.getLength(); i++) {
            double length = length(((Element) paths.item(i)).getAttribute("d"), which);
            // an arc of almost half a circle is longer by forty times what its chord is rounded by
            assertThat(length).as("path " + i + ", " + which).isCloseTo(expected.get(i).length(),
                    within(ROUNDED_MM * (40 + expected.get(i).segments().size())));
        }
    }

    /** Length of path data made of M, L, A and Z, each written out: an arc by its radius and the chord between its ends. */
    private static double length(String data, String which) {
        List<String> words = new ArrayList<>(List.of(data.split(" ")));
        double[] start = null;
        double[] pen = new double[2];
        double length = 0;
        while (!words.isEmpty()) {
            String command = words.remove(0);
            double radius = 0;
            if (command.equals("A")) {
                radius = Double.parseDouble(words.remove(0));
                assertThat(Double.parseDouble(words.remove(0))).as("round: " + which).isEqualTo(radius);
                assertThat(words.remove(0) + words.remove(0)).as("no turn, at most a half circle: " + which).isEqualTo("00");
                assertThat(words.remove(0)).isIn("0", "1");
            }
            double[] to = command.equals("Z") ? start : new double[] {Double.parseDouble(words.remove(0)), Double.parseDouble(words.remove(0))};
            double chord = Math.hypot(to[0] - pen[0], to[1] - pen[1]);
            switch (command) {
                case "M" -> start = to;
                case "L", "Z" -> length += chord;
                case "A" -> length += 2 * radius * Math.asin(Math.min(1, chord / 2 / radius));
                default -> throw new AssertionError("command " + command + " in " + which);
            }
            pen = to;
        }
        return length;
    }

    /** The leaf's outer arc bulges the right way: its middle by the sweep flag is the blank's farthest point. */
    @Test
    void sweepOfTheLeafsArc() throws Exception {
        Cap cap = Cap.solve(Jobs.kiln());
        Blank leaf = Blanks.of(cap).stream().filter(b -> b.id().equals("leaf-1")).findFirst().orElseThrow();
        String data = ((Element) group(written(cap, leaf), Layer.CUT).getElementsByTagName("path").item(0)).getAttribute("d");
        String radius = String.format(java.util.Locale.ROOT, "%.4f", cap.leaves().get(0).shrink().blankRadiusMm());
        // drawn from the lower corner up in the drawing, so anticlockwise as seen: sweep-flag 0 (SVG 1.1, 8.3.8)
        assertThat(data).contains(" A " + radius + " " + radius + " 0 0 0 ");
    }
}
