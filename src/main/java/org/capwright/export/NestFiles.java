package org.capwright.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.capwright.drawing.Drawing;
import org.capwright.export.dxf.DxfFile;
import org.capwright.export.dxf.DxfUnit;
import org.capwright.export.pdf.NestBook;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrintSetup;
import org.capwright.price.Names;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.StockPlan;
import org.capwright.stock.nest.LayoutDrawing;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.ShopFormat;

/** Writes every nested sheet: to scale as PDF, and at true size as SVG and as DXF. */
public final class NestFiles {
    private NestFiles() {
    }

    /**
     * Writes {@code nested-sheets.pdf}, and {@code sheet-1.svg}, {@code sheet-1.dxf} and so on, through all metals and
     * thicknesses; the PDF on the paper that goes with the units.
     *
     * @param folder an empty folder
     * @param plan what to write
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if a file can't be written
     */
    public static void write(Path folder, StockPlan plan, JobTag tag, ShopFormat format) throws IOException {
        NestBook.write(folder.resolve("nested-sheets.pdf"), plan, PrintSetup.of(Paper.of(format.system())), tag, format);
        int number = 0;
        for (SheetGroup group : plan.sheets()) {
            for (SheetLayout layout : group.nest().sheets()) {
                String name = "sheet-" + ++number;
                String from = new Names(format).of(group.stockOf(layout));
                Drawing drawing = LayoutDrawing.of(layout, "sheet " + number);
                String cuts = layout.cuts().isEmpty() ? "" : " A shear can cut it in " + layout.cuts().size() + " cuts.";
                SvgFile.write(folder.resolve(name + ".svg"), drawing, "sheet " + number,
                        String.format(Locale.ROOT, "%s, pieces: %d.%s", from,
                        layout.placements().size(), cuts), tag);
                DxfFile.write(folder.resolve(name + ".dxf"), drawing, List.of("sheet " + number + ", " + from), tag,
                        DxfUnit.of(format.system()));
            }
        }
    }
}
