package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.capwright.blank.Blank;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every page of the templates must have. */
class EveryPageTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void sizeTagAndScaleBars(Paper paper) throws IOException {
        Book book = Book.kiln(folder, paper, true, Map.of());
        for (Book.Sheet sheet : book.sheets()) {
            String which = paper + " page " + sheet.number();
            assertThat(sheet.text()).as(which).contains(book.tag().name()).contains("stamp " + book.tag().stamp())
                    .contains("page " + sheet.number() + " of " + book.sheets().size());
            if (paper != Paper.ONE) {
                assertThat(Math.min(sheet.widthMm(), sheet.heightMm())).as(which).isCloseTo(paper.widthMm(), within(0.01));
                assertThat(Math.max(sheet.widthMm(), sheet.heightMm())).as(which).isCloseTo(paper.heightMm(), within(0.01));
            }
            assertThat(Math.max(sheet.widthMm(), sheet.heightMm())).as("ISO 32000-1, 14 400 units: " + which).isLessThanOrEqualTo(5080);
            bars(sheet, which);
        }
    }

    /** Lines of just these lengths, with a tick at each end, both ways, and the writing beside them. */
    private static void bars(Book.Sheet sheet, String which) {
        for (double length : new double[] {100, 101.6}) {
            assertThat(sheet.pieces()).as(which + ", bar across " + length).anyMatch(p -> p.line()
                    && Math.abs(p.to().x() - p.from().x() - length) < 0.005 && Math.abs(p.to().y() - p.from().y()) < 1e-4
                    && tick(sheet, p.from().x(), p.from().y(), true) && tick(sheet, p.to().x(), p.to().y(), true));
            assertThat(sheet.pieces()).as(which + ", bar up " + length).anyMatch(p -> p.line()
                    && Math.abs(p.to().y() - p.from().y() - length) < 0.005 && Math.abs(p.to().x() - p.from().x()) < 1e-4
                    && tick(sheet, p.from().x(), p.from().y(), false) && tick(sheet, p.to().x(), p.to().y(), false));
        }
        assertThat(sheet.text()).as(which).contains("100 mm").contains("4 in").contains("100 %");
    }

    private static boolean tick(Book.Sheet sheet, double x, double y, boolean upright) {
        return sheet.pieces().stream().anyMatch(p -> p.line() && (upright
                ? Math.abs(p.from().x() - x) < 0.005 && Math.abs(p.to().x() - x) < 0.005 && p.from().y() < y && p.to().y() > y
                : Math.abs(p.from().y() - y) < 0.005 && Math.abs(p.to().y() - y) < 0.005 && p.from().x() < x && p.to().x() > x));
    }

    @ParameterizedTest
    @EnumSource(value = Paper.class, names = {"LETTER", "A4", "ONE"})
    void trueSizePagesNameWhatIsOnThem(Paper paper) throws IOException {
        Book book = Book.kiln(folder, paper, false, Map.of());
        for (Blank blank : book.blanks()) {
            String thickness = String.format(java.util.Locale.ROOT, "%.4f in", blank.sheet().thicknessMm() / 25.4);
            assertThat(book.sheets()).as(paper + " " + blank.name()).anyMatch(sheet -> sheet.text().contains("true size")
                    && sheet.text().contains(blank.name()) && sheet.text().contains("cut " + blank.quantity())
                    && sheet.text().contains(blank.sheet().metal().word()) && sheet.text().contains(thickness)
                    && sheet.text().contains(blank.faceUp()));
        }
        for (Book.Sheet sheet : book.titled("Leaf 1")) {
            assertThat(sheet.text()).contains("cut 2").contains("galvanized 20 ga (0.0396 in)").contains("top face up");
        }
    }
}
