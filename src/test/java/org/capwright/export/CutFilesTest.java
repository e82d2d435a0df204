package org.capwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.blank.Blanks;
import org.capwright.export.pdf.Paper;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.stock.CutItem;
import org.capwright.stock.CutList;
import org.capwright.stock.HardwareItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** All files of a cut: the list read back, and names that files choke on. */
class CutFilesTest {
    @TempDir
    private Path folder;

    @Test
    void cutListReadBack() throws Exception {
        Cap cap = Cap.solve(Jobs.kiln());
        CutFiles.write(folder, cap, List.of(), Paper.A4, false, "0123abcd");
        CutList list = CutList.of(cap, Blanks.of(cap));
        List<CSVRecord> records = csv();
        assertThat(records).hasSize(list.items().size() + list.hardware().size());
        for (CutItem item : list.items()) {
            CSVRecord row = records.get(item.number() - 1);
            assertThat(row.get("item")).isEqualTo(Integer.toString(item.number()));
            assertThat(row.get("part")).isEqualTo(item.part());
            assertThat(row.get("quantity")).isEqualTo(Integer.toString(item.quantity()));
            assertThat(row.get("metal")).isEqualTo(item.sheet().metal().word());
            assertThat(number(row, "thickness mm")).isCloseTo(item.sheet().thicknessMm(), within(0.0006));
            assertThat(number(row, "length mm")).isCloseTo(item.lengthMm(), within(0.0006));
            assertThat(number(row, "width mm")).isCloseTo(item.widthMm(), within(0.0006));
            assertThat(number(row, "mass each kg")).isCloseTo(item.massKg(), within(0.0006));
        }
        for (int i = 0; i < list.hardware().size(); i++) {
            HardwareItem item = list.hardware().get(i);
            CSVRecord row = records.get(list.items().size() + i);
            assertThat(List.of(row.get("part"), row.get("quantity"), row.get("size"), row.get("notes")))
                    .containsExactly(item.name(), Integer.toString(item.quantity()), item.size(), item.note());
        }
    }

    /** Handbook, section 5: sleeve girth 57.1035 in, hood girth 70.4375 in. */
    @Test
    void girthsInTheList() throws Exception {
        CutFiles.write(folder, Cap.solve(Jobs.kiln()), List.of(), Paper.LETTER, false, "0123abcd");
        List<CSVRecord> records = csv();
        assertThat(number(records.get(0), "length mm") / 25.4).isCloseTo(57.1035, within(0.0001));
        assertThat(number(records.get(1), "length mm") / 25.4).isCloseTo(70.4375, within(0.0001));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private List<CSVRecord> csv() throws Exception {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (Reader reader = Files.newBufferedReader(folder.resolve("cut-list.csv"), StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Brennofen M\u00fcller, Stra\u00dfe 5", "\u7a91\u5ba4\u6392\u6c14\u5e3d",
            "Hood \ud83d\udd25 \ud83d\ude80",
        "\"quoted\" 'job'", "<b>&amp; ]]> <!-- x", "a,b;c\td", "line\nbreak", "", " ", "bell \u0007 and nul \u0000",
                "half a pair \ud83d",
        "not a character \uffff", "e\u0301 \u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627",
        "averyveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryveryverylongname"})
    void oddTextsCrashNothing(String text) throws Exception {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.of("job.name", text, "job.customer", text, "job.notes", text, "job.revision",
                text)));
        CutFiles.write(folder, cap, List.of(), Paper.LETTER, false, "0123abcd");
        assertThat(csv()).isNotEmpty();
        for (String name : List.of("cut-list.pdf", "templates.pdf")) {
            try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
                assertThat(document.getNumberOfPages()).isPositive();
            }
        }
        try (var files = Files.list(folder.resolve("blanks"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".svg")).toList()) {
                String title = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())
                        .getElementsByTagName("title").item(0).getTextContent();
                assertThat(title).contains(": ");
            }
        }
    }
}
