package org.capwright.desk.view;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.stage.Window;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.export.JobTag;
import org.capwright.export.NestFiles;
import org.capwright.export.PriceFiles;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.ReadingSheetBook;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.stock.StockPlan;
import org.capwright.store.DeskFolder;

/** What the window writes: templates and the rest by their dialog, sheets, prices and reading sheet into a folder. */
final class Writings {
    private final Session session;
    private final DeskFolder folder;
    private final Supplier<Window> window;

    Writings(Session session, DeskFolder folder, Supplier<Window> window) {
        this.session = session;
        this.folder = folder;
        this.window = window;
    }

    void templates() {
        Solved solved = session.solvedProperty().get();
        if (solved != null) {
            Path beside = session.fileProperty().get().map(path -> path.toAbsolutePath().getParent()).orElse(Path.of(System.getProperty("user.home")));
            ExportDialog.show(window.get(), solved, beside.resolve("cap-files"), folder);
        }
    }

    void sheets(StockPlan plan) {
        Solved solved = session.solvedProperty().get();
        JobTag tag = tag(solved);
        Outbox.write(window.get(), "Where to write the sheets", to -> NestFiles.write(to, plan, tag, solved.format()));
    }

    void prices(List<Price> prices) {
        JobTag tag = tag(session.solvedProperty().get());
        Paper paper = paper();
        Cap cap = prices.get(0).plan().jobs().get(0).cap();
        Outbox.write(window.get(), "Where to write quote and inner sheet", to -> PriceFiles.write(to, cap, prices, paper, tag));
    }

    void readingSheet() {
        Solved solved = session.solvedProperty().get();
        JobTag tag = tag(solved);
        Paper paper = paper();
        Outbox.write(window.get(), "Where to write the reading sheet",
                to -> ReadingSheetBook.write(to.resolve("reading-sheet.pdf"), solved.cap(), paper, tag, solved.format()));
    }

    private static JobTag tag(Solved solved) {
        return JobTag.of(solved.cap().job(), solved.stamp(), solved.checks());
    }

    /** The paper that was chosen last. */
    private Paper paper() {
        return Paper.valueOf(folder.settings().getOrDefault("paper", Paper.LETTER.name()));
    }
}
