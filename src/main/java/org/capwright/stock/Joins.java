package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.capwright.metal.SpotWeld;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.Sheet;
import org.capwright.part.StopBar;
import org.capwright.units.Length;

/** Lists what is welded or closed, with its length. */
final class Joins {
    /** Spot welds are reckoned this many times the table's least spacing apart: common practice, no source. */
    private static final double USUAL_PITCH = 2;

    private Joins() {
    }

    static List<JoinItem> of(Cap cap) {
        List<JoinItem> joins = new ArrayList<>();
        joins.add(seam("sleeve seam", cap.sleeve().flat(), cap.sleeve().sheet()));
        joins.add(seam("hood seam", cap.hood().flat(), cap.hood().sheet()));
        joins.add(JoinItem.weld("standoff to sleeve", 2 * cap.standoff().count(), cap.standoff().heightMm(),
                "weld both edges of the inner flange",
                JoinKind.FILLET));
        for (Leaf leaf : cap.leaves()) {
            boolean welds = leaf.sheet().metal().weldsTo(cap.rods().get(leaf.number() - 1).metal());
            joins.add(JoinItem.weld("pivot rod to leaf " + leaf.number(), 2, 2 * leaf.hingeCorner().yMm(), welds
                    ? "stitch weld along both sides" : "straps and rivets: aluminium and steel can't be welded to each other",
                    JoinKind.STITCH));
            int corners = 2 * (leaf.freeCorner().isPresent() ? 4 : 2);
            joins.add(JoinItem.weld("flange corners of leaf " + leaf.number(), corners, leaf.hingeFlangeMm(), "weld",
                    JoinKind.FILLET));
        }
        for (Gutter gutter : cap.gutters()) {
            joins.add(new JoinItem("gutter " + gutter.number() + " to sleeve", 2 * Cap.mirrored(gutter.number()),
                    gutter.outsideWidthMm() + 2 * gutter.outsideDepthMm(), "weld and seal round the notch", JoinKind.FILLET, 0,
                    true));
        }
        for (StopBar bar : cap.stops()) {
            joins.add(JoinItem.weld("stop bar " + bar.number() + " to hood", 2 * Cap.mirrored(bar.number()),
                    2 * bar.halfWidthMm() + 2 * bar.depthMm(), "weld", JoinKind.FILLET));
        }
        for (Doubler plate : cap.doublers()) {
            joins.add(JoinItem.weld("doubler " + plate.number() + " to hood", 2 * Cap.mirrored(plate.number()),
                    2 * (plate.widthMm() + plate.heightMm()), "weld; fill the gaps at its ends", JoinKind.FILLET));
        }
        return joins;
    }

    private static JoinItem seam(String name, CylinderFlat flat, Sheet sheet) {
        return switch (flat.seam().kind()) {
            case BUTT -> JoinItem.weld(name, flat.pieces(), flat.heightMm(), "butt weld", JoinKind.BUTT);
            case LOCK -> new JoinItem(name, flat.pieces(), flat.heightMm(), "grooved lock", JoinKind.LOCK, 0, true);
            case LAP -> lap(name, flat, sheet);
        };
    }

    private static JoinItem lap(String name, CylinderFlat flat, Sheet sheet) {
        return SpotWeld.forThickness(Length.ofMm(sheet.thicknessMm())).map(row -> {
            double least = row.leastSpacing().mm();
            int most = (int) Math.floor(flat.heightMm() / least);
            int usual = (int) Math.ceil(flat.heightMm() / (USUAL_PITCH * least));
            return new JoinItem(name, flat.pieces(), flat.heightMm(), "lap: " + most
                    + " spot welds at most (table of uncoated steel:"
                    + " prove with a test coupon), " + usual + " reckoned: twice the least spacing, common practice, no source",
                    JoinKind.SPOT, usual, true);
        }).orElse(new JoinItem(name, flat.pieces(), flat.heightMm(), "lap: rivet or weld", JoinKind.LAP, 0, true));
    }
}
