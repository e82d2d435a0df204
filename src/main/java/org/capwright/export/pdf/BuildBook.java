package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.capwright.export.JobTag;
import org.capwright.layout.BuildStep;
import org.capwright.layout.SignOff;

/** Writes the build sheet, with boxes to tick, and the sign-off sheet, with blanks for what was measured. */
public final class BuildBook {
    private BuildBook() {
    }

    /**
     * Writes the build sheet.
     *
     * @param file where to
     * @param steps the order of work
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @throws IOException if it can't be written
     */
    public static void writeSteps(Path file, List<BuildStep> steps, PrintSetup setup, JobTag tag) throws IOException {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            BuildStep step = steps.get(i);
            blocks.add(Block.Paragraph.heading((i + 1) + "  " + step.title()));
            if (!step.cautions().isEmpty()) {
                blocks.add(new CautionBlock(step.cautions()));
            }
            int last = step.actions().size() - 1;
            // a step stays on one page
            IntStream.rangeClosed(0, last).forEach(k -> blocks.add(new TickBlock(step.actions().get(k), k < last)));
        }
        try (PdfBook book = new PdfBook("Build sheet", tag, setup.scale())) {
            book.write(Flow.pages(blocks, setup.paper(), "Build sheet",
                    "order of work with this job's numbers; tick what is done", book.typeface()), file);
        }
    }

    /**
     * Writes the sign-off sheet.
     *
     * @param file where to
     * @param rows what to verify
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @throws IOException if it can't be written
     */
    public static void writeSignOff(Path file, List<SignOff.Row> rows, PrintSetup setup, JobTag tag) throws IOException {
        List<List<String>> cells = rows.stream().map(row -> List.of(row.what(), row.nominal(), row.tolerance(), "", "")).toList();
        List<Block> blocks = new ArrayList<>(TableBlocks.ruled(List.of(0.38, 0.16, 0.2, 0.16, 0.1),
                List.of("what", "nominal", "tolerance or limit", "measured", "initials"), cells));
        blocks.add(new Block.Paragraph("Tolerances: lengths ISO 2768-1 class c (from memory); bores EN 1506, plus only (one copy);"
                + " bends common practice, no source; limits are the job's own.", 2.2, 4, true));
        blocks.add(new Block.Paragraph("Built by ____________________   checked by ____________________   date ____________", 2.6,
                8));
        try (PdfBook book = new PdfBook("Sign-off sheet", tag, setup.scale())) {
            book.write(Flow.pages(blocks, setup.paper(), "Sign-off sheet", "verify before the cap leaves the shop",
                    book.typeface()), file);
        }
    }
}
