package org.capwright.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.capwright.drawing.Drawing;
import org.capwright.export.dxf.DxfFile;
import org.capwright.export.dxf.DxfUnit;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.StockPlan;
import org.capwright.stock.StockSheet;
import org.capwright.stock.nest.LayoutDrawing;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Writes every nested sheet at true size, as SVG and as DXF. */
public final class NestFiles {
    private NestFiles() {
    }

    /**
     * Writes {@code sheet-1.svg}, {@code sheet-1.dxf} and so on, through all metals and thicknesses.
     *
     * @param folder an empty folder
     * @param plan what to write
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if a file can't be written
     */
    public static void write(Path folder, StockPlan plan, JobTag tag, ShopFormat format) throws IOException {
        int number = 0;
        for (SheetGroup group : plan.sheets()) {
            for (SheetLayout layout : group.nest().sheets()) {
                String name = "sheet-" + ++number;
                String from = from(group.stockOf(layout), format);
                Drawing drawing = LayoutDrawing.of(layout, "sheet " + number);
                String cuts = layout.cuts().isEmpty() ? "" : " A shear can cut it in " + layout.cuts().size() + " cuts.";
                SvgFile.write(folder.resolve(name + ".svg"), drawing, "sheet " + number, String.format(Locale.ROOT, "%s, pieces: %d.%s", from,
                        layout.placements().size(), cuts), tag);
                DxfFile.write(folder.resolve(name + ".dxf"), drawing, List.of("sheet " + number + ", " + from), tag, DxfUnit.of(format.system()));
            }
        }
    }

    private static String from(StockSheet stock, ShopFormat format) {
        return Sheets.name(stock.sheet(), format) + ", " + format.length(Length.ofMm(stock.lengthMm())) + " x " + format.length(Length.ofMm(stock.widthMm()))
                + (stock.remnant() ? ", remnant" : "");
    }
}
