package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A table as blocks: a head and rows, cells wrapped, the head repeated on every page. */
final class TableBlocks {
    private static final double TEXT_MM = 2.3;
    private static final double LINE_MM = 3.9;
    private static final double PAD_MM = 1.2;
    private static final double BETWEEN_MM = 2.4;
    private static final double RULED_EXTRA_MM = 0.6;

    private TableBlocks() {
    }

    /**
     * A table.
     *
     * @param shares widths of the columns as shares of the whole
     * @param head what stands above the columns
     * @param rows cells, row by row
     * @return its blocks
     */
    static List<Block> of(List<Double> shares, List<String> head, List<List<String>> rows) {
        return of(shares, head, rows, false);
    }

    /** The same with lines between the columns, and rows high enough to write in. */
    static List<Block> ruled(List<Double> shares, List<String> head, List<List<String>> rows) {
        return of(shares, head, rows, true);
    }

    private static List<Block> of(List<Double> shares, List<String> head, List<List<String>> rows, boolean ruled) {
        Row headRow = new Row(shares, head, Optional.empty(), ruled);
        List<Block> blocks = new ArrayList<>(List.of(headRow));
        for (List<String> row : rows) {
            blocks.add(new Row(shares, row, Optional.of(headRow), ruled));
        }
        return blocks;
    }

    private record Row(List<Double> shares, List<String> cells, Optional<Block> repeated, boolean ruled) implements Block {
        @Override
        public double heightMm(Typeface typeface, double widthMm) throws IOException {
            int most = 1;
            for (int i = 0; i < cells.size(); i++) {
                most = Math.max(most, cell(typeface, i, widthMm).size());
            }
            return most * LINE_MM + 2 * PAD_MM + (ruled ? RULED_EXTRA_MM : 0);
        }

        @Override
        public void paint(Canvas canvas, Typeface typeface, double x, double top, double widthMm) throws IOException {
            double left = x;
            double inset = ruled ? PAD_MM : 0;
            for (int i = 0; i < cells.size(); i++) {
                double y = top - PAD_MM - TEXT_MM - (ruled ? RULED_EXTRA_MM / 2 : 0);
                for (String line : cell(typeface, i, widthMm)) {
                    canvas.text(left + (i == 0 ? 0 : inset), y, TEXT_MM, line);
                    y -= LINE_MM;
                }
                left += shares.get(i) * widthMm;
            }
            double bottom = top - heightMm(typeface, widthMm) + 0.4;
            canvas.pen(repeated.isEmpty() ? 0.25 : 0.1, repeated.isEmpty() ? 0 : 0.6f);
            canvas.line(x, bottom, x + widthMm, bottom);
            if (ruled) {
                columns(canvas, x, top + 0.4, bottom, widthMm);
            }
        }

        private void columns(Canvas canvas, double x, double top, double bottom, double widthMm) throws IOException {
            double left = x;
            for (int i = 0; i < shares.size() - 1; i++) {
                left += shares.get(i) * widthMm;
                canvas.line(left, top, left, bottom);
            }
        }

        private List<String> cell(Typeface typeface, int index, double widthMm) {
            return LineBreaks.of(typeface, TEXT_MM, cells.get(index), shares.get(index) * widthMm - BETWEEN_MM);
        }

        /** A head stays with the first row. */
        @Override
        public boolean keepsWithNext() {
            return repeated.isEmpty();
        }
    }
}
