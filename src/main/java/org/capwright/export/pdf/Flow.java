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
    static List<PrintPage> pages(List<Block> blocks, Paper paper, String title, String subtitle,
            Typeface typeface) throws IOException {
        return pages(blocks, paper, new Head(title, subtitle, true), typeface);
    }

    /** The pages of a letter: the same without scale bars. */
    static List<PrintPage> letter(List<Block> blocks, Paper paper, String title, String subtitle,
            Typeface typeface) throws IOException {
        return pages(blocks, paper, new Head(title, subtitle, false), typeface);
    }

    private record Head(String title, String subtitle, boolean bars) {
    }

    private static List<PrintPage> pages(List<Block> blocks, Paper paper, Head head, Typeface typeface) throws IOException {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm(), head.bars());
        List<PrintPage> pages = new ArrayList<>();
        List<Placed> page = new ArrayList<>();
        double top = area.maxY();
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            double height = block.heightMm(typeface, area.width());
            double together = together(blocks.subList(i, blocks.size()), typeface, area.width());
            boolean apart = together <= area.height() && top - together < area.minY();
            if ((apart || top - height < area.minY()) && !page.isEmpty()) {
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

    /** Height of a block and of what must stay with it. */
    private static double together(List<Block> blocks, Typeface typeface, double widthMm) throws IOException {
        double height = 0;
        for (Block block : blocks) {
            height += block.heightMm(typeface, widthMm);
            if (!block.keepsWithNext()) {
                break;
            }
        }
        return height;
    }

    private static PrintPage page(List<Placed> placed, Paper paper, Head head, Typeface typeface) {
        return new PrintPage(paper.widthMm(), paper.heightMm(), head.title(), head.subtitle(), (canvas, area) -> {
            for (Placed one : placed) {
                one.block().paint(canvas, typeface, area.minX(), one.top(), area.width());
            }
        }, head.bars());
    }
}
