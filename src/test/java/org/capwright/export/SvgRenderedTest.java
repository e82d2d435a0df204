package org.capwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** SVG drawn by librsvg's rsvg-convert: its size in pixels, and ink wherever the core has an outline. */
class SvgRenderedTest {
    private static final int DPI = 127;
    private static final double MM_PER_PIXEL = 25.4 / DPI;
    private static final double MARGIN_MM = 5;

    @TempDir
    private Path folder;

    @Test
    void outlinesAreWhereTheCoreHasThem() throws Exception {
        assumeTrue(OutsideProgram.works("rsvg-convert", "--version"),
                "rsvg-convert (librsvg2-bin) is not there: the second renderer is left out");
        Cap cap = Demos.cap("kiln-room");
        for (Blank blank : Blanks.of(cap)) {
            Path svg = folder.resolve(blank.id() + ".svg");
            Path png = folder.resolve(blank.id() + ".png");
            SvgFile.write(svg, blank, JobTag.of(cap.job(), "0123abcd", List.of()), Writing.of(cap).format());
            OutsideProgram.lines(List.of("rsvg-convert", "-d", Integer.toString(DPI), "-p", Integer.toString(DPI), "-b", "white",
                    "-o",
                    png.toString()), List.of(svg));
            BufferedImage picture = ImageIO.read(png.toFile());
            assertThat(picture.getWidth() * MM_PER_PIXEL).as(blank.name())
                    .isCloseTo(blank.lengthMm() + 2 * MARGIN_MM, within(2 * MM_PER_PIXEL));
            for (Segment segment : blank.outline().segments()) {
                for (double t = 0.05; t < 1; t += 0.1) {
                    assertThat(ink(picture, blank, segment.pointAt(t))).as("%s at %s", blank.name(), segment.pointAt(t)).isTrue();
                }
            }
        }
    }

    private static boolean ink(BufferedImage picture, Blank blank, Vec2 point) {
        double x = point.x() - blank.drawing().bounds().minX() + MARGIN_MM;
        double y = blank.drawing().bounds().maxY() + MARGIN_MM - point.y();
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                int px = Math.min(picture.getWidth() - 1, Math.max(0, (int) (x / MM_PER_PIXEL) + i));
                int py = Math.min(picture.getHeight() - 1, Math.max(0, (int) (y / MM_PER_PIXEL) + j));
                if ((picture.getRGB(px, py) & 0xFF) < 200) {
                    return true;
                }
            }
        }
        return false;
    }
}
