package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.capwright.blank.Blank;
import org.capwright.export.JobTag;
import org.capwright.export.Sheets;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * Writes all blanks at true size: a first page that says what is where; each blank that needs several tiles with a page of
 * its dimensions and how the tiles lie; cylinders and channels with their dimensions only, unless the whole is asked for; small
 * patterns, and the notches, hole groups and ends of long parts, together on shared pages.
 */
public final class TemplateBook {
    private static final int MIDDLES_LISTED = 3;

    private final List<Blank> blanks;
    private final Paper paper;
    private final boolean whole;
    private final ShopFormat format;
    private final List<PrintPage> pages = new ArrayList<>();
    private final List<SharedPages.Item> small = new ArrayList<>();
    private final Map<String, SortedSet<Integer>> where = new LinkedHashMap<>();

    private TemplateBook(List<Blank> blanks, Paper paper, boolean whole, ShopFormat format) {
        this.blanks = blanks;
        this.paper = paper;
        this.whole = whole;
        this.format = format;
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param blanks what to draw
     * @param paper the paper to print on
     * @param whole whether long parts are drawn at true size as a whole too
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, List<Blank> blanks, Paper paper, boolean whole, JobTag tag,
            ShopFormat format) throws IOException {
        write(file, blanks, PrintSetup.of(paper), whole, tag, format);
    }

    /**
     * Writes the file for a printer.
     *
     * @param file where to
     * @param blanks what to draw
     * @param setup the paper to print on and the printer's error on it
     * @param whole whether long parts are drawn at true size as a whole too
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, List<Blank> blanks, PrintSetup setup, boolean whole, JobTag tag, ShopFormat format)
            throws IOException {
        try (PdfBook book = new PdfBook("True-size templates", tag, setup.scale())) {
            TemplateBook templates = new TemplateBook(blanks, setup.paper(), whole, format);
            templates.collect(book.typeface());
            book.write(templates.withFirstPage(book.typeface()), file);
        }
    }

    private void collect(Typeface typeface) throws IOException {
        for (Blank blank : blanks) {
            int first = pages.size();
            add(blank, typeface);
            IntStream.range(first, pages.size()).forEach(index -> note(blank.name(), index));
        }
        for (SharedPages.Shared shared : SharedPages.pages(small, paper, typeface)) {
            shared.parts().forEach(part -> note(part, pages.size()));
            pages.add(shared.page());
        }
    }

    /** Pages are numbered from 1, with the first page before them. */
    private void note(String part, int index) {
        where.computeIfAbsent(part, name -> new TreeSet<>()).add(index + 2);
    }

    private void add(Blank blank, Typeface typeface) {
        if (SharedPages.fits(blank.drawing().bounds(), paper)) {
            small.add(new SharedPages.Item(blank.name(), captions(blank), blank.drawing(), blank.drawing().bounds()));
        } else if (blank.detailsOnly() && !whole) {
            pages.add(DimensionedPage.of(blank, Optional.empty(), paper, typeface, format, subtitle(blank)));
            details(blank);
        } else {
            Tiling tiling = paper == Paper.ONE ? TilePages.onePage(blank) : TilePages.tiling(blank, paper);
            pages.add(DimensionedPage.of(blank, Optional.of(tiling).filter(t -> t.tiles().size() > 1), paper, typeface, format,
                    subtitle(blank)));
            pages.addAll(TilePages.pages(blank, tiling, subtitle(blank)));
        }
    }

    /** Windows that look alike are drawn once. */
    private void details(Blank blank) {
        Map<String, List<Blank.Detail>> byName = blank.details().stream()
                .collect(Collectors.groupingBy(Blank.Detail::name, LinkedHashMap::new, Collectors.toList()));
        byName.forEach((name, details) -> {
            String alike = details.size() == 1 ? "" : ", " + details.size() + " alike";
            String middles = details.size() > MIDDLES_LISTED ? "places: see its dimensions" : "at " + details.stream()
                    .map(detail -> format.length(Length.ofMm(detail.middleMm() - blank.outline().bounds().minX())))
                    .collect(Collectors.joining(", "));
            List<String> captions = List.of(blank.name() + ": " + name + alike,
                    middles, "cut " + blank.quantity() + ", " + Sheets.name(blank.sheet(), format) + ", " + blank.faceUp());
            small.add(new SharedPages.Item(blank.name(), captions, blank.drawing(), details.get(0).window()));
        });
    }

    private List<String> captions(Blank blank) {
        return List.of(blank.name() + ", cut " + blank.quantity(), Sheets.name(blank.sheet(), format),
                blank.faceUp() + ", " + blank.grain().words());
    }

    private String subtitle(Blank blank) {
        return "cut " + blank.quantity() + " from " + Sheets.name(blank.sheet(), format) + ", " + blank.faceUp() + ", "
                + blank.grain().words();
    }

    /** Numbers in words: runs of three and more as {@code 4 to 10}. */
    static String words(SortedSet<Integer> numbers) {
        List<String> words = new ArrayList<>();
        List<Integer> all = List.copyOf(numbers);
        for (int i = 0; i < all.size(); i++) {
            int last = i;
            while (last + 1 < all.size() && all.get(last + 1) == all.get(last) + 1) {
                last++;
            }
            boolean run = last > i + 1;
            words.add(run ? all.get(i) + " to " + all.get(last) : Integer.toString(all.get(i)));
            i = run ? last : i;
        }
        return String.join(", ", words);
    }

    private List<PrintPage> withFirstPage(Typeface typeface) throws IOException {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Paragraph.plain("Print at 100 % (\"actual size\"), never \"fit to page\". Before cutting, measure the scale bars"
                + " on every page, both ways: 100 mm and 4 in. If a bar is out by more than 0.5 mm, do not cut from that page."));
        blocks.add(Block.Paragraph.plain("Full lines are cut. Dash-dot lines are bent, and are the middle of the bend. Thin lines are"
                + " marked. Tiles overlap: lay crosses with the same number on each other."));
        List<List<String>> rows = blanks.stream().map(blank -> List.of(blank.name(), Integer.toString(blank.quantity()),
                Sheets.name(blank.sheet(), format), size(blank), words(where.get(blank.name())))).toList();
        blocks.addAll(TableBlocks.of(List.of(0.19, 0.06, 0.28, 0.35, 0.12), List.of("part", "cut", "from", "blank size", "pages"),
                rows));
        List<PrintPage> all = new ArrayList<>(Flow.pages(blocks, paper, "True-size templates", "what is on which page",
                typeface));
        all.addAll(pages);
        return all;
    }

    private String size(Blank blank) {
        return format.length(Length.ofMm(blank.lengthMm())) + " x " + format.length(Length.ofMm(blank.widthMm()));
    }
}
