package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where lines break, and where they never do. */
class LineBreaksTest {
    private static final double CAPITALS_MM = 2.4;

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

    private List<String> lines(String text, double widthMm) {
        return LineBreaks.of(typeface, CAPITALS_MM, text, widthMm);
    }

    @Test
    void betweenWords() {
        assertThat(lines("bend all flanges down", 20)).containsExactly("bend all", "flanges", "down");
        assertThat(lines("", 20)).containsExactly("");
    }

    @Test
    void whereTheTextBeginsANewLine() {
        assertThat(lines("first line\nsecond line\r\n\nfourth", 100)).containsExactly("first line", "second line", "", "fourth");
    }

    /** At every width at which each measure has room, none is torn. */
    @Test
    void measuresStayInOnePiece() {
        String text = "shrink the curved lip 1 9/32 in +.014 in all, cut 57 3/32 in +.010 x 10 5/32 in -.014, at 0.435 in w.g., 120.0 MPa,"
                + " 85.0 deg, 1.20 mm, 20 ga, see 29 CFR 1910.252 and NFPA 96, \u00b1 0.047 in";
        List<String> measures = List.of("1 9/32 in +.014", "57 3/32 in +.010", "10 5/32 in -.014", "0.435 in w.g.,", "120.0 MPa,",
                "85.0 deg,", "1.20 mm,", "20 ga,", "29 CFR 1910.252", "NFPA 96,", "\u00b1 0.047 in");
        double widest = measures.stream().mapToDouble(one -> typeface.widthMm(CAPITALS_MM, one)).max().orElseThrow();
        for (double width = widest + 0.1; width < 200; width += 1.7) {
            List<String> lines = lines(text, width);
            for (String measure : measures) {
                assertThat(lines).as("%s at %.1f mm", measure, width).anyMatch(line -> line.contains(measure));
            }
            assertThat(String.join(" ", lines)).isEqualTo(text);
        }
    }

    @Test
    void nothingIsWiderThanTheLine() {
        for (String text : List.of("aVeryLongWordWithoutAnySpaceAtAllThatGoesOnAndOn", "short 123 45/64 in +.014 end",
                "x aVeryLongWordWithoutAnySpaceAtAll y")) {
            List<String> lines = lines(text, 17);
            assertThat(lines).allMatch(line -> typeface.widthMm(CAPITALS_MM, line) <= 17);
            assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
        }
    }
}
