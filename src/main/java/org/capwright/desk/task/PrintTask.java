package org.capwright.desk.task;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.concurrent.Task;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.capwright.desk.session.Solved;
import org.capwright.export.JobTag;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.TemplateBook;

/** Sends the templates to a printer at 100 %. */
public final class PrintTask extends Task<Boolean> {
    private final Solved solved;
    private final Paper paper;

    /**
     * The task.
     *
     * @param solved the cap
     * @param paper the paper in the printer
     */
    public PrintTask(Solved solved, Paper paper) {
        this.solved = solved;
        this.paper = paper;
    }

    @Override
    protected Boolean call() throws IOException, PrinterException {
        Path file = Files.createTempFile("capwright-print", ".pdf");
        try {
            TemplateBook.write(file, solved.blanks(), paper, false, JobTag.of(solved.cap().job(), solved.stamp(), solved.checks()), solved.format());
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                PrinterJob job = PrinterJob.getPrinterJob();
                // pages carry their own size and are printed at true size
                job.setPageable(new PDFPageable(document));
                if (!job.printDialog()) {
                    return false;
                }
                job.print();
                return true;
            }
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
