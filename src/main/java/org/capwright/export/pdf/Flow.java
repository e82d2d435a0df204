package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;

/** Lays running matter out on pages, block after block. */
final class Flow {
    private Flow() {
    }

    private record Placed(Block block, double top) {
    }

    /** The pages of some blocks. */
    static List<PrintPage> pages(List<Block> blocks, Paper paper, String title, String subtitle, Typeface typeface) throws IOException {
        return pages(blocks, paper, new Head(title, subtitle, true), typeface);
    }

    /** The pages of a letter: the same without scale bars. */
    static List<PrintPage> letter(List<Block> blocks, Paper paper, String title, String subtitle, Typeface typeface) throws IOException {
        return pages(blocks, paper, new Head(title, subtitle, false), typeface);
    }

    private record Head(String title, String subtitle, boolean bars) {
    }

    private static List<PrintPage> pages(List<Block> blocks, Paper paper, Head head, Typeface typeface) throws IOException {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm(), head.bars());
        List<PrintPage> pages = new ArrayList<>();
        List<Placed> page = new ArrayList<>();
        double top = area.maxY();
        for (Block block : blocks) {
            double height = block.heightMm(typeface, area.width());
            if (top - height < area.minY() && !page.isEmpty()) {
                pages.add(page(List.copyOf(page), paper, head, typeface));
                page.clear();
                top = area.maxY();
                if (block.repeated().isPresent()) {
                    page.add(new Placed(block.repeated().get(), top));
                    top -= block.repeated().get().heightMm(typeface, area.width());
                }
            }
            page.add(new Placed(block, top));
            top -= height;
        }
        pages.add(page(List.copyOf(page), paper, head, typeface));
        return pages;
    }

    private static PrintPage page(List<Placed> placed, Paper paper, Head head, Typeface typeface) {
        return new PrintPage(paper.widthMm(), paper.heightMm(), head.title(), head.subtitle(), (canvas, area) -> {
            for (Placed one : placed) {
                one.block().paint(canvas, typeface, area.minX(), one.top(), area.width());
            }
        }, head.bars());
    }
}
