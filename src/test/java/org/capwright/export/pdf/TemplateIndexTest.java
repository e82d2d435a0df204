package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.RandomCaps;
import org.capwright.export.Demos;
import org.capwright.geom.Bounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the templates say about themselves: on which page a part is, and which details are alike. */
class TemplateIndexTest {
    @TempDir
    private Path folder;

    @Test
    void pageNumbersInWords() {
        assertThat(TemplateBook.words(new TreeSet<>(List.of(2, 14)))).isEqualTo("2, 14");
        assertThat(TemplateBook.words(new TreeSet<>(List.of(4, 5, 6, 7, 9, 10)))).isEqualTo("4 to 7, 9, 10");
        assertThat(TemplateBook.words(new TreeSet<>(List.of(3)))).isEqualTo("3");
    }

    /** Every page that names a part is listed for it, and no other. */
    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "grain-dryer-hall"})
    void everyPageOfAPartIsListed(String demo) throws IOException {
        Book book = Book.of(folder, Demos.cap(demo), Paper.LETTER, false);
        String first = book.sheets().get(0).text();
        for (Blank blank : book.blanks()) {
            TreeSet<Integer> pages = new TreeSet<>();
            for (Book.Sheet sheet : book.sheets().subList(1, book.sheets().size())) {
                if (sheet.text().lines().anyMatch(line -> begins(line, blank.name()))) {
                    pages.add(sheet.number());
                }
            }
            assertThat(first.lines()).as("%s on %s", blank.name(), pages)
                    .anyMatch(line -> line.startsWith(blank.name() + " ") && line.strip().endsWith(" "
                            + TemplateBook.words(pages)));
        }
    }

    private static boolean begins(String line, String part) {
        return line.toLowerCase(java.util.Locale.ROOT).matches(java.util.regex.Pattern.quote(part) + "(,|:).*");
    }

    /** Only one of several details that are called alike is drawn, so they must be: as wide, as high, cut alike. */
    @Test
    void detailsOfOneNameLookAlike() {
        int several = 0;
        for (RandomCaps.Drawn drawn : RandomCaps.of(6_000, 60)) {
            for (Blank blank : Blanks.of(drawn.cap())) {
                for (Blank.Detail detail : blank.details()) {
                    Blank.Detail first = blank.details().stream().filter(one -> one.name().equals(detail.name())).findFirst()
                            .orElseThrow();
                    several += first == detail ? 0 : 1;
                    assertThat(same(first.window(), detail.window())).as("%s: %s in %s", blank.id(), detail, drawn).isTrue();
                }
            }
        }
        assertThat(several).isPositive();
    }

    private static boolean same(Bounds a, Bounds b) {
        return Math.abs(a.width() - b.width()) < 1e-6 && Math.abs(a.height() - b.height()) < 1e-6
                && Math.abs(a.minY() - b.minY()) < 1e-6;
    }
}
