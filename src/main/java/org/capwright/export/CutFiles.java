package org.capwright.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Cards;
import org.capwright.blank.StationStrips;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.export.dxf.DxfFile;
import org.capwright.export.dxf.DxfUnit;
import org.capwright.export.pdf.BuildBook;
import org.capwright.export.pdf.CardBook;
import org.capwright.export.pdf.CutListBook;
import org.capwright.export.pdf.LayoutBook;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrintSetup;
import org.capwright.export.pdf.StripBook;
import org.capwright.export.pdf.TemplateBook;
import org.capwright.layout.BuildSteps;
import org.capwright.layout.Layout;
import org.capwright.layout.SignOff;
import org.capwright.part.Cap;
import org.capwright.stock.CutList;
import org.capwright.units.ShopFormat;

/** Everything that a shop needs to cut a cap. */
public final class CutFiles {
    private CutFiles() {
    }

    /**
     * Writes {@code cut-list.csv}, {@code cut-list.pdf}, {@code templates.pdf}, {@code station-strips.pdf}, {@code
     * cards.pdf}, {@code layout.pdf}, {@code build-sheet.pdf}, {@code sign-off-sheet.pdf}, and an SVG and a DXF for each blank
     * under {@code blanks}.
     *
     * @param folder an empty folder
     * @param cap the cap
     * @param checks its checks
     * @param paper the paper to print on
     * @param whole whether long parts are drawn at true size as a whole too
     * @param stamp short fingerprint of the job's inputs
     * @throws IOException if a file can't be written
     */
    public static void write(Path folder, Cap cap, List<Check> checks, Paper paper, boolean whole,
            String stamp) throws IOException {
        ShopFormat format = Writing.of(cap).format();
        write(folder, cap, checks, Choice.all(PrintSetup.of(paper), whole, DxfUnit.of(format.system())), stamp);
    }

    /**
     * How to write it.
     *
     * @param setup the paper to print on and the printer's error on it
     * @param whole whether long parts are drawn at true size as a whole too
     * @param unit the unit of DXF files
     * @param kinds what to write
     */
    public record Choice(PrintSetup setup, boolean whole, DxfUnit unit, Set<Kind> kinds) {
        /** Keeps its own copy. */
        public Choice {
            kinds = Set.copyOf(kinds);
        }

        /**
         * Everything.
         *
         * @param setup the paper to print on and the printer's error on it
         * @param whole whether long parts are drawn at true size as a whole too
         * @param unit the unit of DXF files
         * @return the choice
         */
        public static Choice all(PrintSetup setup, boolean whole, DxfUnit unit) {
            return new Choice(setup, whole, unit, EnumSet.allOf(Kind.class));
        }
    }

    /** What can be written. */
    public enum Kind {
        /** True-size pages of the blanks. */
        TEMPLATES("true-size templates"),
        /** Cut list as PDF and as a table. */
        CUT_LIST("cut list"),
        /** Strips with the stations of the cylinders. */
        STRIPS("station strips"),
        /** Gauges for bends, rim, lip and stop. */
        CARDS("angle, rim, lip and stop cards"),
        /** Dimensioned drawings. */
        LAYOUT("layout drawings"),
        /** Order of work. */
        BUILD("build sheet"),
        /** Dimensions to verify. */
        SIGN_OFF("sign-off sheet"),
        /** SVG and DXF of each blank. */
        PATTERNS("SVG and DXF of each blank");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * What a person calls it.
         *
         * @return such as {@code cut list}
         */
        public String words() {
            return words;
        }
    }

    /**
     * Writes the same for a printer and a cutting table.
     *
     * @param folder an empty folder
     * @param cap the cap
     * @param checks its checks
     * @param choice how to write it
     * @param stamp short fingerprint of the job's inputs
     * @throws IOException if a file can't be written
     */
    public static void write(Path folder, Cap cap, List<Check> checks, Choice choice, String stamp) throws IOException {
        JobTag tag = JobTag.of(cap.job(), stamp, checks);
        ShopFormat format = Writing.of(cap).format();
        List<Blank> blanks = Blanks.of(cap);
        CutList list = CutList.of(cap, blanks);
        List<FileWriting> all = new ArrayList<>();
        add(all, choice, Kind.TEMPLATES, () -> TemplateBook.write(folder.resolve("templates.pdf"), blanks, choice.setup(),
                choice.whole(), tag, format));
        add(all, choice, Kind.CUT_LIST, () -> CutListBook.write(folder.resolve("cut-list.pdf"), cap, list, checks, choice.setup(),
                tag, format));
        add(all, choice, Kind.STRIPS, () -> StripBook.write(folder.resolve("station-strips.pdf"), StationStrips.of(cap),
                choice.setup(), tag, format));
        add(all, choice, Kind.CARDS, () -> CardBook.write(folder.resolve("cards.pdf"), Cards.of(cap), Cards.ADVICE,
                choice.setup(), tag));
        add(all, choice, Kind.LAYOUT, () -> LayoutBook.write(folder.resolve("layout.pdf"), Layout.of(cap), choice.setup(), tag,
                format));
        add(all, choice, Kind.BUILD, () -> BuildBook.writeSteps(folder.resolve("build-sheet.pdf"), BuildSteps.of(cap),
                choice.setup(), tag));
        add(all, choice, Kind.SIGN_OFF, () -> BuildBook.writeSignOff(folder.resolve("sign-off-sheet.pdf"), SignOff.of(cap),
                choice.setup(), tag));
        add(all, choice, Kind.CUT_LIST, () -> CutListCsv.write(folder.resolve("cut-list.csv"), list, format));
        if (choice.kinds().contains(Kind.PATTERNS)) {
            Path patterns = Files.createDirectory(folder.resolve("blanks"));
            for (Blank blank : blanks) {
                all.add(() -> SvgFile.write(patterns.resolve(blank.id() + ".svg"), blank, tag, format));
                all.add(() -> DxfFile.write(patterns.resolve(blank.id() + ".dxf"), blank, tag, format, choice.unit()));
            }
        }
        writeAll(all);
    }

    private static void add(List<FileWriting> all, Choice choice, Kind kind, FileWriting file) {
        if (choice.kinds().contains(kind)) {
            all.add(file);
        }
    }

    /** Writes one file. */
    @FunctionalInterface
    private interface FileWriting {
        void write() throws IOException;
    }

    /** Files know nothing of each other, so each processor writes its own. */
    private static void writeAll(List<FileWriting> files) throws IOException {
        try {
            files.parallelStream().forEach(file -> {
                try {
                    file.write();
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }
}
