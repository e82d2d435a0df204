package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.capwright.price.Names;
import org.capwright.stock.BarGroup;
import org.capwright.stock.StockPlan;
import org.capwright.stock.bar.CutBar;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** The plan of the bars as blocks: which rod comes from which bar. */
final class BarBlocks {
    private BarBlocks() {
    }

    static List<Block> of(StockPlan plan, ShopFormat format) {
        List<List<String>> rows = new ArrayList<>();
        for (BarGroup group : plan.bars()) {
            String name = new Names(format).bar(group);
            for (CutBar bar : group.plan().bars()) {
                String cuts = String.join(", ", bar.piecesMm().stream().map(mm -> format.length(Length.ofMm(mm))).toList());
                rows.add(List.of(name, format.length(Length.ofMm(bar.size().lengthMm())), cuts,
                        format.length(Length.ofMm(bar.restMm(group.kerfMm())))));
            }
            group.plan().tooLongMm().forEach(mm -> rows.add(List.of(name, "NO BAR", format.length(Length.ofMm(mm)), "")));
        }
        List<Block> blocks = new ArrayList<>(List.of(Block.Paragraph.heading("Bars")));
        blocks.addAll(TableBlocks.of(List.of(0.32, 0.16, 0.36, 0.16), List.of("bar", "length", "cut", "rest"), rows));
        return blocks;
    }
}
