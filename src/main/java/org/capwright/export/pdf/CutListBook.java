package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Verdict;
import org.capwright.export.Cautions;
import org.capwright.export.JobTag;
import org.capwright.export.Sheets;
import org.capwright.job.JobInputs;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.part.Shrink;
import org.capwright.stock.CutList;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/**
 * Writes the cut list: sizes over all, cautions, what is not clear, blanks, hardware, joins, the shrinking of the leaves,
 * checks.
 */
public final class CutListBook {
    private final Cap cap;
    private final CutList list;
    private final List<Check> checks;
    private final ShopFormat format;

    private CutListBook(Cap cap, CutList list, List<Check> checks, ShopFormat format) {
        this.cap = cap;
        this.list = list;
        this.checks = checks;
        this.format = format;
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param cap the cap
     * @param list its list
     * @param checks the cap's checks
     * @param paper the paper to print on
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, Cap cap, CutList list, List<Check> checks, Paper paper, JobTag tag,
            ShopFormat format) throws IOException {
        write(file, cap, list, checks, PrintSetup.of(paper), tag, format);
    }

    /**
     * Writes the file for a printer.
     *
     * @param file where to
     * @param cap the cap
     * @param list its list
     * @param checks the cap's checks
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, Cap cap, CutList list, List<Check> checks, PrintSetup setup, JobTag tag,
            ShopFormat format)
            throws IOException {
        try (PdfBook book = new PdfBook("Cut list", tag, setup.scale())) {
            List<Block> blocks = new CutListBook(cap, list, checks, format).blocks();
            String lengths = format.system() == UnitSystem.INCH ? "lengths to the nearest fraction, the rest in thousandths"
                    : "lengths to a tenth of a millimetre";
            book.write(Flow.pages(blocks, setup.paper(), "Cut list", lengths, book.typeface()), file);
        }
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>(head());
        blocks.addAll(cautions());
        blocks.addAll(notClear());
        blocks.addAll(blanks());
        blocks.addAll(hardware());
        blocks.addAll(joins());
        blocks.addAll(shrinking());
        blocks.addAll(clear());
        return blocks;
    }

    /** Fouls and tight ones, before anything is cut. */
    private List<Block> notClear() {
        List<List<String>> rows = Checks.worstFirst(checks).stream().filter(check -> check.verdict() != Verdict.CLEAR)
                .map(check -> List.of(check.verdict().word(), check.words(),
                        check.quantity().words(check.value(), format) + (check.estimate() ? " (estimate)" : ""),
                        (check.limit().least() ? "at least " : "at most ")
                                + check.quantity().words(check.limit().value(), format))).toList();
        return rows.isEmpty() ? List.of() : section("Checks that are not clear", List.of(0.08, 0.42, 0.25, 0.25),
                List.of("", "what", "found", "limit"), rows);
    }

    /** The clear ones two in a row, at the end. */
    private List<Block> clear() {
        List<Check> clear = checks.stream().filter(check -> check.verdict() == Verdict.CLEAR).toList();
        return clear.isEmpty() ? List.of() : section("Checks that are clear", List.of(0.185, 0.16, 0.155, 0.185, 0.16, 0.155),
                List.of("what", "found", "limit", "what", "found", "limit"), twoInARow(clear));
    }

    private List<List<String>> twoInARow(List<Check> clear) {
        int half = (clear.size() + 1) / 2;
        return IntStream.range(0, half).mapToObj(i -> Stream.concat(cells(clear.get(i)),
                half + i < clear.size() ? cells(clear.get(half + i)) : Stream.of("", "", "")).toList()).toList();
    }

    private Stream<String> cells(Check check) {
        return Stream.of(check.words(), check.quantity().words(check.value(), format) + (check.estimate() ? ", est." : ""),
                (check.limit().least() ? "min " : "max ") + check.quantity().words(check.limit().value(), format));
    }

    private List<Block> cautions() {
        List<Block> blocks = new ArrayList<>(List.of(Block.Paragraph.heading("Cautions")));
        Cautions.ALL.forEach(caution -> blocks.add(Block.Paragraph.plain(caution)));
        return blocks;
    }

    private List<Block> head() {
        List<Block> blocks = new ArrayList<>();
        cap.job().find(JobInputs.CUSTOMER).filter(text -> !text.isBlank())
                .ifPresent(text -> blocks.add(Block.Paragraph.plain("For: " + text)));
        blocks.add(Block.Paragraph.plain("Cap " + length(cap.heightMm()) + " high, " + length(cap.widthMm()) + " wide, "
                + format.mass(cap.massKg()) + " without rivets, welds and sealant. Leaves open to "
                + format.angle(Angle.ofRad(cap.stopRad())) + "."));
        cap.job().find(JobInputs.NOTES).filter(text -> !text.isBlank())
                .ifPresent(text -> blocks.add(Block.Paragraph.plain("Notes: " + text)));
        return blocks;
    }

    private List<Block> blanks() {
        List<List<String>> rows = list.items().stream().map(item -> List.of(Integer.toString(item.number()), item.part(),
                Integer.toString(item.quantity()), Sheets.name(item.sheet(), format),
                length(item.lengthMm()) + " x " + length(item.widthMm()), format.mass(item.massKg()),
                item.grain() + "; " + String.join("; ", item.notes()))).toList();
        return section("Blanks", List.of(0.04, 0.12, 0.05, 0.18, 0.23, 0.09, 0.29),
                List.of("", "part", "cut", "from", "blank size", "each", "notes"), rows);
    }

    private List<Block> hardware() {
        List<List<String>> rows = list.hardware().stream().map(item -> List.of(item.name(), Integer.toString(item.quantity()),
                item.size(), item.note())).toList();
        return section("Hardware", List.of(0.24, 0.1, 0.4, 0.26), List.of("what", "quantity", "size", "notes"), rows);
    }

    private List<Block> joins() {
        List<List<String>> rows = list.joins().stream().map(item -> List.of(item.name(), Integer.toString(item.quantity()),
                length(item.lengthMm()), item.note())).toList();
        return section("Seams and welds", List.of(0.28, 0.1, 0.2, 0.42), List.of("what", "quantity", "length of one", "how"),
                rows);
    }

    /** What the lip must measure after each pass. */
    private List<Block> shrinking() {
        List<List<String>> rows = new ArrayList<>();
        for (Leaf leaf : cap.leaves()) {
            List<Shrink.Pass> passes = leaf.shrink().passes();
            IntStream.range(0, passes.size()).forEach(i -> rows.add(List.of("leaf " + leaf.number(), Integer.toString(i + 1),
                    format.angle(Angle.ofRad(passes.get(i).turnRad())), length(passes.get(i).lipArcMm()),
                    i == 0 ? length(leaf.shrink().takeUpMm()) + " in all, " + leaf.crimps() + " crimps" : "")));
        }
        return section("Shrinking the curved flange (estimate; try one on scrap)", List.of(0.14, 0.08, 0.2, 0.26, 0.32),
                List.of("part", "pass", "flange turned to", "lip measures, along its arcs", "to gather"), rows);
    }

    private static List<Block> section(String heading, List<Double> shares, List<String> head, List<List<String>> rows) {
        List<Block> blocks = new ArrayList<>(List.of(Block.Paragraph.heading(heading)));
        blocks.addAll(TableBlocks.of(shares, head, rows));
        return blocks;
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}
