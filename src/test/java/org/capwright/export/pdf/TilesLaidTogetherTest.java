package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.export.Demos;
import org.capwright.export.JobTag;
import org.capwright.geom.Bounds;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The tiles of a leaf, as pictures, laid on each other by nothing but their crosses: the outline must run on without a gap,
 * within 0.2 mm, and tiles must agree where they overlap.
 */
class TilesLaidTogetherTest {
    private static final double DPI = 254;
    private static final double MM_PER_PIXEL = 25.4 / DPI;
    private static final double WITHIN_MM = 0.2;
    private static final double SAMPLE_MM = 0.5;
    private static final int DARK = 160;

    @TempDir
    private Path folder;

    /** A tile: its picture, its height on paper, its crosses by number. */
    private record Sheet(String title, BufferedImage picture, double heightMm, Map<Integer, Vec2> crosses) {
        boolean dark(double x, double y) {
            int px = (int) Math.floor(x / MM_PER_PIXEL);
            int py = (int) Math.floor((heightMm - y) / MM_PER_PIXEL);
            return px >= 0 && py >= 0 && px < picture.getWidth() && py < picture.getHeight()
                    && (picture.getRGB(px, py) & 0xFF) < DARK;
        }

        boolean darkNear(Vec2 p) {
            int reach = (int) Math.floor(WITHIN_MM / MM_PER_PIXEL);
            for (int i = -reach; i <= reach; i++) {
                for (int j = -reach; j <= reach; j++) {
                    if (Math.hypot(i, j) <= reach && dark(p.x() + i * MM_PER_PIXEL, p.y() + j * MM_PER_PIXEL)) {
                        return true;
                    }
                }
            }
            return false;
        }
    }

    @ParameterizedTest
    @CsvSource({"kiln-room, leaf-1, LETTER", "bakery-oven-room, leaf-1, A4", "grain-dryer-hall, leaf-2, LETTER"})
    void outlineRunsOn(String demo, String id, Paper paper) throws IOException {
        Cap cap = Demos.cap(demo);
        Blank blank = Blanks.of(cap).stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
        Path file = folder.resolve("templates.pdf");
        TemplateBook.write(file, List.of(blank), paper, false, JobTag.of(cap.job(), "0123abcd", List.of()), Writing.of(cap)
                .format());
        List<Sheet> sheets = read(file);
        assertThat(sheets).hasSizeGreaterThan(3);
        Tiling tiling = TilePages.tiling(blank, paper);
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm());
        if (tiling.widthMm() > tiling.heightMm()) {
            area = PageFrame.area(paper.heightMm(), paper.widthMm());
        }
        // only the first tile's place on the leaf is taken from the program; all others follow from the crosses
        Vec2 first = new Vec2(tiling.tiles().get(0).window().minX() - area.minX(), tiling.tiles().get(0).window()
                .minY() - area.minY());
        Map<Sheet, Vec2> places = places(sheets, first);
        assertThat(places).hasSameSizeAs(sheets);
        check(blank, places, area);
    }

    private static void check(Blank blank, Map<Sheet, Vec2> places, Bounds area) {
        Bounds inside = area.grown(-0.5);
        int seenTwice = 0;
        for (Segment segment : blank.outline().segments()) {
            int steps = (int) Math.ceil(segment.length() / SAMPLE_MM);
            for (int i = 0; i <= steps; i++) {
                Vec2 point = segment.pointAt((double) i / steps);
                int seen = 0;
                for (Map.Entry<Sheet, Vec2> one : places.entrySet()) {
                    Vec2 onPage = point.minus(one.getValue());
                    if (inside.contains(onPage)) {
                        assertThat(one.getKey().darkNear(onPage)).as("%s at %s", one.getKey().title(), point).isTrue();
                        seen++;
                    }
                }
                assertThat(seen).as("tiles that show the outline at " + point).isPositive();
                seenTwice += seen > 1 ? 1 : 0;
            }
        }
        assertThat(seenTwice).as("points seen on two tiles").isPositive();
    }

    /** From the first tile on, each tile that shares a cross with one that already lies. */
    private static Map<Sheet, Vec2> places(List<Sheet> sheets, Vec2 first) {
        Map<Sheet, Vec2> places = new HashMap<>(Map.of(sheets.get(0), first));
        Deque<Sheet> next = new ArrayDeque<>(List.of(sheets.get(0)));
        while (!next.isEmpty()) {
            Sheet lies = next.poll();
            for (Sheet sheet : sheets) {
                sheet.crosses().keySet().stream().filter(lies.crosses()::containsKey).findFirst()
                        .filter(n -> !places.containsKey(sheet))
                        .ifPresent(number -> {
                            places.put(sheet, places.get(lies).plus(lies.crosses().get(number))
                                    .minus(sheet.crosses().get(number)));
                            next.add(sheet);
                        });
            }
        }
        return places;
    }

    private static List<Sheet> read(Path file) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                List<Texts.Text> texts = Texts.of(document, i + 1);
                String title = texts.get(0).words();
                if (title.contains(", tile ")) {
                    BufferedImage picture = renderer.renderImageWithDPI(i, (float) DPI, ImageType.GRAY);
                    double height = document.getPage(i).getMediaBox().getHeight() * 25.4 / 72;
                    Sheet bare = new Sheet(title, picture, height, Map.of());
                    sheets.add(new Sheet(title, picture, height, crosses(bare, PageStrokes.lines(document.getPage(i)), texts)));
                }
            }
        }
        return sheets;
    }

    /**
     * Crosses: where to look is read from the file, where they are from the picture, their numbers from the writing
     * next to them.
     */
    private static Map<Integer, Vec2> crosses(Sheet sheet, List<PageStrokes.Line> lines, List<Texts.Text> texts) {
        Map<Integer, Vec2> crosses = new HashMap<>();
        List<Texts.Text> numbers = texts.stream().filter(text -> text.words().matches("\\d+")).toList();
        for (PageStrokes.Line level : lines) {
            if (Math.abs(level.dx() - 8) < 0.01 && level.dy() < 0.01) {
                Vec2 middle = level.from().plus(level.to()).times(0.5);
                Texts.Text number = numbers.stream().min(Comparator.comparingDouble(text -> text.at().distance(middle)))
                        .orElseThrow();
                crosses.put(Integer.parseInt(number.words()), pictured(sheet, middle));
            }
        }
        return crosses;
    }

    /** The darkest row and column near a place, weighed by how dark they are. */
    private static Vec2 pictured(Sheet sheet, Vec2 near) {
        double x = 0;
        double y = 0;
        double bestColumn = 0;
        double bestRow = 0;
        for (int k = -12; k <= 12; k++) {
            double off = k * MM_PER_PIXEL;
            int column = 0;
            int row = 0;
            for (int j = -36; j <= 36; j++) {
                column += sheet.dark(near.x() + off, near.y() + j * MM_PER_PIXEL) ? 1 : 0;
                row += sheet.dark(near.x() + j * MM_PER_PIXEL, near.y() + off) ? 1 : 0;
            }
            if (column > bestColumn) {
                bestColumn = column;
                x = near.x() + off;
            }
            if (row > bestRow) {
                bestRow = row;
                y = near.y() + off;
            }
        }
        return new Vec2((Math.floor(x / MM_PER_PIXEL) + 0.5) * MM_PER_PIXEL, (Math.floor(y / MM_PER_PIXEL) + 0.5) * MM_PER_PIXEL);
    }
}
