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
import org.capwright.export.pdf.PrintSetup;
import org.capwright.export.pdf.TemplateBook;

/** Sends the templates to a printer at 100 %. */
public final class PrintTask extends Task<Boolean> {
    private final Solved solved;
    private final PrintSetup setup;

    /**
     * The task.
     *
     * @param solved the cap
     * @param setup the paper in the printer, and what the printer gets wrong on it
     */
    public PrintTask(Solved solved, PrintSetup setup) {
        this.solved = solved;
        this.setup = setup;
    }

    @Override
    protected Boolean call() throws IOException, PrinterException {
        Path file = Files.createTempFile("capwright-print", ".pdf");
        try {
            TemplateBook.write(file, solved.blanks(), setup, false,
                    JobTag.of(solved.cap().job(), solved.stamp(), solved.checks()), solved.format());
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
