package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is written instead of letters that the typeface lacks, and how large its letters are. */
class TypefaceTest {
    private PDDocument document;
    private Typeface typeface;

    @BeforeEach
    void open() throws IOException {
        document = new PDDocument();
        typeface = new Typeface(document);
    }

    @AfterEach
    void close() throws IOException {
        document.close();
    }

    /** The outline of a capital letter, read from the font file by another way. */
    @Test
    void capitalsAreAsHighAsTheyAreSaidToBe() throws IOException {
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(PDDocument.class.getResourceAsStream(
                "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")))) {
            double share = font.getPath("H").getBounds2D().getHeight() / font.getUnitsPerEm();
            assertThat(typeface.sizeMm(2.5) * share).isCloseTo(2.5, within(0.002));
        }
    }

    @Test
    void lettersOfManyAlphabetsAreThere() {
        String all = "Bäckerei Żółć Kőszeg İstanbul Печь Φούρνος 45° ± × ½ ⅝ Ø ≤ ″ – “ ” …";
        assertThat(typeface.printable(all)).isEqualTo(all);
    }

    /** Unicode Standard Annex 15: U+339C is mm, U+2460 is 1, U+2159 is 1/6 with a fraction slash, U+FF21 is A. */
    @Test
    void whatIsLackingIsWrittenAnotherWay() {
        assertThat(typeface.printable("5 ㎜ ① ⅙ Ａ")).isEqualTo("5 mm 1 1\u20446 A");
        assertThat(typeface.printable("⌀ 12 ✓ ✗")).isEqualTo("Ø 12 √ ×");
        assertThat(typeface.printable("a\nb\tc\u200bd\u00ade")).isEqualTo("a b cde");
    }

    @Test
    void whatHasNoOtherWayIsABoxAndNoQuestion() {
        assertThat(typeface.printable("窯 kiln")).isEqualTo("\u25a1 kiln");
    }

    @Test
    void shortenedToItsRoom() {
        String name = "A very long name of a job that goes on and on";
        assertThat(typeface.shortened(2.4, name, 500)).isEqualTo(name);
        for (double room : new double[] {5, 20, 41.3, 70}) {
            String cut = typeface.shortened(2.4, name, room);
            assertThat(cut).endsWith("\u2026").hasSizeLessThan(name.length());
            assertThat(name).startsWith(cut.substring(0, cut.length() - 1));
            assertThat(typeface.widthMm(2.4, cut)).isLessThanOrEqualTo(room);
            String more = name.substring(0, Math.min(name.length(), cut.length() + 1)) + "\u2026";
            assertThat(typeface.widthMm(2.4, more)).as(room + " mm: as much as fits").isGreaterThan(room);
        }
    }
}
